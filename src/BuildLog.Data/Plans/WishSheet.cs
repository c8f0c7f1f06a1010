using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Data.Plans;

/// <summary>One thing that can be tried beside parts.</summary>
/// <param name="Words">What it is called, in sentences and forms.</param>
/// <param name="Hint">What to type.</param>
/// <param name="Put">The vehicle with it, from what was typed; refuses what means nothing.</param>
public sealed record WishLine(Later Words, Later Hint, Func<Trial, string, Trial> Put)
{
    /// <summary>What was typed, a bare road speed in it with the unit it is in.</summary>
    public Func<string, Unit, string> WithSpeedIn { get; init; } = (typed, _) => typed;
}

/// <summary>What can be tried beside parts, what is tried most first: form, command and plan read it here.</summary>
/// <remarks>
/// The next one is a member of <see cref="Wish"/>, a line here, and a migration that lets it be stored. What is tried is its owner's word, as sure as on a spec
/// sheet. Axles that were weighed carry another mass, or another share on driven wheels, between them; told one by one they stand as told.
/// </remarks>
public static class WishSheet
{
    private static readonly Dictionary<Wish, WishLine> Lines = new()
    {
        [Wish.Mass] = new(new Later("mass"), new Later("as driven, such as 1600 kg"), (tried, text) => tried.OfMass(Spec.Mass.Line().Told(text))),
        [Wish.DragArea] = OfLoad(new Later("drag area"), new Later("such as 0.85 m²"), Spec.DragArea, (load, drag) => load with { DragArea = drag }),
        [Wish.RollingResistance] = OfLoad(new Later("rolling resistance"), new Later("over weight, such as 0.013"), Spec.RollingResistance, (load, rolling) => load with { RollingResistance = rolling }),
        [Wish.Altitude] = OfLoad(new Later("altitude"), new Later("above sea level, such as 1500 m"), Spec.Altitude, (load, altitude) => load with { Altitude = altitude.Value.Value }),

        [Wish.Cruise] = Wanted(new Later("cruise"), new Later("such as 110 km/h at 2400 rpm, ± 150 rpm or in 4 behind it"), (goals, text) => goals with { Cruise = [CruiseGoal.ReadLine(text, goals.Cruise.FirstOrDefault()).OrRefuse(), .. goals.Cruise.Skip(1)] }) with { WithSpeedIn = CruiseGoal.WithSpeedIn },
        [Wish.Hill] = Wanted(new Later("hill to hold"), new Later("such as 6 % at 100 km/h, in 4 behind it"), (goals, text) => goals with { Hill = HillGoal.ReadLine(text, goals.Hill).OrRefuse() }) with { WithSpeedIn = HillGoal.WithSpeedIn },
        [Wish.TopSpeed] = Wanted(new Later("top speed"), new Later("at least, such as 160 km/h"), (goals, text) => goals with { TopSpeed = TopSpeedGoal.Read(text).OrRefuse() }) with { WithSpeedIn = TopSpeedGoal.WithSpeedIn },
        [Wish.HillStart] = Wanted(new Later("hill start"), new Later("to pull away on, such as 25 %"), (goals, text) => goals with { HillStart = HillStartGoal.Read(text).OrRefuse() }),
        [Wish.OverallLow] = Wanted(new Later("overall low ratio"), new Later("at least, such as 40"), (goals, text) => goals with { OverallLow = OverallLowGoal.Read(text).OrRefuse() }),
        [Wish.TyreDiameter] = Wanted(new Later("tyre diameter at most"), new Later("such as 700 mm"), (goals, text) => goals with { TyreDiameter = LengthLimit.ReadTyreDiameter(text).OrRefuse() }),
        [Wish.TyreWidth] = Wanted(new Later("tyre width at most"), new Later("such as 225 mm"), (goals, text) => goals with { TyreWidth = LengthLimit.ReadTyreWidth(text).OrRefuse() }),
        [Wish.Track] = Wanted(new Later("track at most"), new Later("tyre middle to tyre middle, such as 1450 mm"), (goals, text) => goals with { Track = LengthLimit.ReadTrack(text).OrRefuse() }),

        [Wish.DrivenShare] = new(new Later("share on driven wheels"), new Later("such as 52 %"), (tried, text) => tried.OfShare(Spec.DrivenShare.Line().Told(text))),
        [Wish.FrontAxleMass] = OnAxles(new Later("mass on front axle"), new Later("laden, such as 700 kg"), Spec.FrontAxleMass, (axles, mass) => axles with { Front = mass }),
        [Wish.RearAxleMass] = OnAxles(new Later("mass on rear axle"), new Later("laden, such as 750 kg"), Spec.RearAxleMass, (axles, mass) => axles with { Rear = mass }),
        [Wish.GravityHeight] = OfLoad(new Later("gravity height"), new Later("centre of gravity above the road, such as 620 mm"), Spec.GravityHeight, (load, height) => load with { GravityHeight = height }),
        [Wish.Wheelbase] = OfLoad(new Later("wheelbase"), new Later("such as 2650 mm"), Spec.Wheelbase, (load, wheelbase) => load with { Wheelbase = wheelbase }),
        [Wish.FrontSprings] = InFront(new Later("front springs apart"), new Later("middle to middle, such as 760 mm"), Spec.FrontSprings, (hanging, springs) => hanging with { Springs = springs }),
        [Wish.FrontPad] = InFront(new Later("front springs lie at"), new Later("front high is +, such as 2 deg"), Spec.FrontPad, (hanging, pad) => hanging with { Pad = pad }),
        [Wish.RearSprings] = Behind(new Later("rear springs apart"), new Later("middle to middle, such as 1020 mm"), Spec.RearSprings, (hanging, springs) => hanging with { Springs = springs }),
        [Wish.RearPad] = Behind(new Later("rear springs lie at"), new Later("front high is +, such as 2 deg"), Spec.RearPad, (hanging, pad) => hanging with { Pad = pad }),
    };

    /// <summary>All of them, in their order.</summary>
    public static IReadOnlyList<Wish> All { get; } = [.. Lines.Keys];

    public static WishLine Line(this Wish wish) => Lines[wish];

    private static WishLine OfLoad(Later words, Later hint, Spec spec, Func<VehicleLoad, Known, VehicleLoad> put)
        => new(words, hint, (tried, text) => tried.Moving(load => put(load, spec.Line().Told(text))));

    private static WishLine OnAxles(Later words, Later hint, Spec spec, Func<AxleMasses, Known, AxleMasses> put)
        => new(words, hint, (tried, text) => tried with { Driveline = tried.Driveline with { AxleMasses = put(tried.Driveline.AxleMasses ?? new(), spec.Line().Told(text)) with { Weighed = null } } });

    private static WishLine InFront(Later words, Later hint, Spec spec, Func<Hanging, Known, Hanging> put)
        => new(words, hint, (tried, text) => tried with { Driveline = tried.Driveline with { FrontHanging = put(tried.Driveline.FrontHanging, spec.Line().Told(text)) } });

    private static WishLine Behind(Later words, Later hint, Spec spec, Func<Hanging, Known, Hanging> put)
        => new(words, hint, (tried, text) => tried with { Driveline = tried.Driveline with { RearHanging = put(tried.Driveline.RearHanging, spec.Line().Told(text)) } });

    private static WishLine Wanted(Later words, Later hint, Func<OwnersGoals, string, OwnersGoals> put) => new(words, hint, (tried, text) => tried with { Goals = put(tried.Goals, text) });

    private static Trial Moving(this Trial tried, Func<VehicleLoad, VehicleLoad> put) => tried with { Driveline = tried.Driveline with { Load = put(tried.Driveline.Load ?? new()) } };

    // Each axle carries its share of it.
    private static Trial OfMass(this Trial tried, Known mass)
    {
        var moving = tried.Moving(load => load with { Mass = mass });
        return tried.Driveline.AxleMasses is { Front.Value: { } front, Rear.Value: { } rear }
            ? moving.Carrying(mass.Value * (front / (front + rear)), mass.Value * (rear / (front + rear)))
            : moving;
    }

    // Where weighed axles speak before what is told, it is they that carry otherwise.
    private static Trial OfShare(this Trial tried, Known share)
    {
        var moving = tried.Moving(load => load with { DrivenShare = share });
        if (tried.Driveline.AxleMasses is not { Front.Value: { } front, Rear.Value: { } rear } || DrivenWheels.ShareOnTheRoad(moving.Driveline)?.Value == share.Value.Value) return moving;

        var driving = share.Value * (front + rear);
        var other = (front + rear) - driving;
        return tried.Driveline.DrivingPosition == Position.FrontAxle ? moving.Carrying(driving, other) : moving.Carrying(other, driving);
    }

    private static Trial Carrying(this Trial tried, Measured front, Measured rear)
        => tried with { Driveline = tried.Driveline with { AxleMasses = new(new(front, Source.OwnersWord), new(rear, Source.OwnersWord)) } };
}
