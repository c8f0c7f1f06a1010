using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Checks;

/// <summary>The wheels go on the studs of the axle, over its spigot, with its nuts.</summary>
/// <remarks>
/// Studs, thread and seat are the same or they are not. Bolt circles within 0.05 mm are one, and so are two measured ones where each can only be the
/// same one of the patterns wheels are sold by; what else cannot be told apart is a watch, and near misses such as 112 and 114.3 mm clash once they
/// can. A bore smaller than the spigot does not go on; a larger one leaves the wheel to the nuts, which a ring puts right
/// where its wall has room. Source: geometry; the patterns from memory.
/// </remarks>
internal sealed class WheelBoltsCheck : ICheck, ILookedAt
{
    private static string Limit => Spoken("geometry");

    /// <summary>The last figure that bolt circles are written with, and bores are turned to.</summary>
    internal const double Same = 0.05e-3;

    internal const double Loose = 0.3e-3;

    /// <summary>The thinnest wall that centring rings have: common practice, no source.</summary>
    internal const double RingWall = 1e-3;

    public string Id => "wheel-bolts";

    public string Title => Spoken("Wheel bolts and centre bore");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => new[] { (At: Position.FrontAxle, Axle: driveline.FrontAxle), (At: Position.RearAxle, Axle: driveline.RearAxle) }
            .Where(place => place.Axle?.Hub is not null && driveline.Tyres?.On(place.At).Wheel is not null)
            .SelectMany(place => Judge([place.At, Position.Tyres], place.At.InWords(), place.Axle!.Hub!, driveline.Tyres!.On(place.At).Wheel!.Bolting ?? new()));

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
    {
        if (driveline.Tyres is null) yield break;

        foreach (var at in (Position[])[Position.RearAxle, Position.FrontAxle])
        {
            if (driveline.AxleAt(at) is { Hub: null }) yield return new(at, Spoken("studs, bolt circle and spigot"), Spoken("count the studs, measure between two of them and across the spigot"));
            if (driveline.AxleAt(at) is not null && driveline.Tyres.On(at).Wheel?.Bolting is null)
                yield return new(at == Position.FrontAxle && driveline.Tyres.FrontPair is not null ? Position.FrontTyres : Position.Tyres, Spoken("wheels' holes, bolt circle and bore"), Spoken("count the holes, measure between two of them and across the bore"));
        }
    }

    private IEnumerable<Finding> Judge(IReadOnlyList<Position> joint, string axle, Bolting hub, Bolting wheel)
    {
        var missing = Lacking(hub, wheel, axle).ToList();
        if (missing.Count > 0) yield return this.Open(joint, Spoken($"Whether the wheels go on the {axle}"), missing, Limit);

        var others = Others(joint, axle, hub, wheel);
        if (hub.Studs is { } studs && wheel.Studs is { } holes && studs != holes)
        {
            yield return this.Plain(
                joint, Verdict.Clash, Because.Outside, $"The {axle} has {studs} studs, the wheels {holes} holes.", Limit,
                $"wheels with {studs} holes{On(hub.PitchCircle)}", $"hubs with {holes} studs{On(wheel.PitchCircle)}");

            // Whoever looks for other wheels needs what else is wrong; what would fit does not count on these.
            others = others.Where(finding => finding.Verdict != Verdict.Fits);
        }

        foreach (var finding in others) yield return finding;
    }

    private IEnumerable<Finding> Others(IReadOnlyList<Position> joint, string axle, Bolting hub, Bolting wheel)
    {
        if (hub.PitchCircle is { } hubCircle && wheel.PitchCircle is { } wheelCircle) yield return Circles(joint, axle, hub.Studs, hubCircle.Value, wheelCircle.Value);
        if (hub.Bore is { } spigot && wheel.Bore is { } bore) yield return Bores(joint, axle, spigot.Value, bore.Value);
        if (hub.Thread is { } thread && wheel.Thread is { } nut && !Spelling.IsSame(thread, nut))
            yield return this.Plain(joint, Verdict.Clash, Because.Outside, $"The {axle}'s studs are {thread}, the wheels' nuts {nut}.", Limit, $"nuts of {thread}");
        if (hub.Seat is { } stud && wheel.Seat is { } seat && stud != seat)
            yield return this.Plain(joint, Verdict.Clash, Because.Outside, $"The {axle}'s nuts seat on a {Word(stud)}, the wheels have a {Word(seat)}.", Limit, $"nuts with a {Word(seat)} seat");
    }

    private Finding Circles(IReadOnlyList<Position> joint, string axle, int? studs, Measured hub, Measured wheel)
    {
        var apart = wheel - hub;
        var wanted = new Window(-Same - 1e-9, Same + 1e-9);
        var judged = Verdicts.Judge(apart, wanted);
        var (could, theirs) = studs is { } n && judged.Verdict == Verdict.Watch ? (BoltPatterns.Matching(n, hub), BoltPatterns.Matching(n, wheel)) : ([], []);
        var isOne = could is [var only] && theirs is [var other] && only == other;
        var pattern = isOne ? Spoken($"; of the patterns wheels are sold by, both can only be {could[0].Name}")
            : could.Count > 1 ? Spoken($"; the {axle} may be {string.Join(Spoken(" or "), could.Select(each => each.Name))}")
            : "";
        return this.Judged(new(
            joint, apart, Units.Millimetre, wanted,
            $"The {axle}'s bolt circle is {Circle(hub)}, the wheels' {Circle(wheel)}{pattern}.",
            isOne ? Spoken("geometry; the patterns from memory") : Limit)
        {
            ByLimits = isOne ? (Verdict.Fits, Because.Inside) : judged,
            LimitIsVerified = !isOne,
            Cures = [$"wheels with a bolt circle of {Circle(hub)}{(judged.Verdict == Verdict.Watch ? Spoken(", tried on by hand before they are bought") : "")}"],
        });
    }

    private Finding Bores(IReadOnlyList<Position> joint, string axle, Measured spigot, Measured bore)
    {
        var play = bore - spigot;
        var limits = new TwoLimits(new(0, Loose), Window.AtLeast(0));
        var snug = Said.Fitting(spigot, limits.Good, Units.Millimetre, 2);
        return this.Judged(new(
            joint, play, Units.Millimetre, limits.Good,
            $"The {axle}'s spigot is {Said.Number(spigot, Units.Millimetre, 1)}, the wheels' bore {Said.Number(bore, Units.Millimetre, 1)}.",
            Limit)
        {
            ByLimits = limits.Judge(play),
            Reaches = limits.Straddled(play),
            Cures = play.Value is >= 0 and <= Loose ? [Spoken("a wheel tried on by hand before they are bought")]
                : play.Value >= 2 * RingWall ? [$"rings of {Said.Number(bore, Units.Millimetre, 1)} outside and {snug} inside"]
                : [$"wheels bored to {snug}, or to {Said.AsTyped(Window.AtLeast(spigot.Interval95.High + (2 * RingWall)), Units.Millimetre, 1)} with rings that fill it"],
        });
    }

    // A nominal one as patterns are written, 100 or 114.3 mm; a measured one with its interval.
    private static SaidNumber Circle(Measured circle) => circle.IsExact ? Said.Alone(circle, Units.Millimetre) : Said.Number(circle, Units.Millimetre, 2);

    private static string On(Known? circle) => circle is null ? "" : Spoken($" on {Circle(circle.Value)}");

    private static IEnumerable<Missing> Lacking(Bolting hub, Bolting wheel, string axle)
    {
        if (hub.Studs is null) yield return new(Spoken($"the {axle}'s studs are not counted"), $"count the {axle}'s studs");
        if (wheel.Studs is null) yield return new(Spoken("the wheels' holes are not counted"), Spoken("count the wheels' holes"));
        if (hub.PitchCircle is null) yield return new(Spoken($"the {axle}'s bolt circle is not known"), $"measure between two of the {axle}'s studs, centre to centre");
        if (wheel.PitchCircle is null) yield return new(Spoken("the wheels' bolt circle is not known"), Spoken("measure between two holes of a wheel, edge to the same edge"));
        if (hub.Bore is null) yield return new(Spoken($"the {axle}'s spigot is not known"), $"measure the {axle}'s spigot across with a caliper");
        if (wheel.Bore is null) yield return new(Spoken("the wheels' bore is not known"), Spoken("measure the wheel's centre bore with a caliper"));
    }

    private static string Word(Seat seat) => seat switch
    {
        Seat.Cone => Spoken("cone"),
        Seat.Ball => Spoken("ball"),
        Seat.Flat => Spoken("flat"),
        _ => throw new ArgumentOutOfRangeException(nameof(seat), seat, "No such seat."),
    };
}
