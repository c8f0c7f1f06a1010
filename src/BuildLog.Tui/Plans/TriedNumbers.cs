using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Tui.Plans;

/// <summary>Any other number of a part, behind its name on the part's page: <c>3.36; torque rating 5000 Nm</c>.</summary>
internal static class TriedNumbers
{
    private static readonly IReadOnlyList<TriedNumber> All =
    [
        new(Position.Engine, new Later("idle"), Idle, (car, number) => car.Engine is { } engine ? car with { Engine = engine with { Idle = number } } : null),
        OfEngine(Spec.LowestPull, (engine, number) => engine with { LowestPull = number }),
        OfEngine(Spec.CriticalAltitude, (engine, number) => engine with { CriticalAltitude = number }),
        OfEngine(Spec.PilotBore, (engine, number) => engine with { Rear = engine.Rear with { PilotBore = number } }),
        OfGearbox(Spec.TorqueRating, (box, number) => box with { TorqueRating = number }),
        OfGearbox(Spec.ClutchRating, (box, number) => box with { Front = box.Front with { ClutchRating = number } }),
        OfGearbox(Spec.Spigot, (box, number) => box with { Front = box.Front with { Spigot = number } }),
        OfGearbox(Spec.Reverse, (box, number) => box with { Reverse = number }),
        OfGearbox(Spec.StallTorqueRatio, (box, number) => box with { Converter = (box.Converter ?? new Converter(LocksUp: false)) with { StallTorqueRatio = number } }),
        Of(Position.TransferCase, Spec.TorqueRating, (car, number) => car.TransferCase is { } box ? car with { TransferCase = box with { TorqueRating = number } } : null),
        .. OfAxles(Spec.TorqueRating, (axle, number) => axle with { TorqueRating = number }),
        .. OnAxles(new Later("hub reduction"), Hub, Hubbed).Select(number => number with { Free = WithoutHub }),
        .. OfAxles(Spec.LowStep, (axle, number) => axle with { LowStep = number }),
        .. OfAxles(Spec.HubFaces, (axle, number) => axle with { HubFaces = number }),
        .. OfAxles(Spec.Perches, (axle, number) => axle with { Perches = number }),
        .. OfAxles(Spec.PinionToPerch, (axle, number) => axle with { PinionToPerch = number }),
        .. OfAxles(Spec.Droop, (axle, number) => axle with { Travel = (axle.Travel ?? new()) with { Droop = number } }),
        .. OfAxles(Spec.Bump, (axle, number) => axle with { Travel = (axle.Travel ?? new()) with { Bump = number } }),
        .. OnAxles(new Later("studs"), Studs, (axle, number) => axle with { Hub = (axle.Hub ?? new()) with { Studs = (int)number.Value.Value } }),
        .. OfAxles(Spec.PitchCircle, (axle, number) => axle with { Hub = (axle.Hub ?? new()) with { PitchCircle = number } }),
        .. OfAxles(Spec.Bore, (axle, number) => axle with { Hub = (axle.Hub ?? new()) with { Bore = number } }),
        OfTyres(Spec.LoadedRadius, (tyres, number) => tyres with { LoadedRadius = number }),
        OfWheels(Spec.RimWidth, (wheel, number) => wheel with { RimWidth = number }),
        OfWheels(Spec.Offset, (wheel, number) => wheel with { Offset = number }),
        new(Position.Tyres, new Later("studs"), Studs, (car, number) => OnWheels(car, wheel => wheel with { Bolting = (wheel.Bolting ?? new()) with { Studs = (int)number.Value.Value } })),
        OfWheels(Spec.PitchCircle, (wheel, number) => wheel with { Bolting = (wheel.Bolting ?? new()) with { PitchCircle = number } }),
        OfWheels(Spec.Bore, (wheel, number) => wheel with { Bolting = (wheel.Bolting ?? new()) with { Bore = number } }),
    ];

    /// <summary>What was typed of a part without its named numbers, and those.</summary>
    public static (string Others, IReadOnlyList<(TriedNumber Number, string Text)> Named) Parted(Position position, string text)
    {
        var (others, named) = (new List<string>(), new List<(TriedNumber Number, string Text)>());
        foreach (var typed in NamedNumbers.Parted(text))
        {
            if (All.Where(each => each.Position == position).Select(each => (Number: each, Text: each.Behind(typed))).FirstOrDefault(each => each.Text is not null) is { Text: { } behind } found) named.Add((found.Number, behind));
            else others.Add(typed);
        }

        return (string.Join($"{NamedNumbers.Between} ", others), named);
    }

    /// <summary>The driveline in which the part itself is read that has these numbers beside it.</summary>
    public static Driveline Freed(Driveline driveline, IReadOnlyList<(TriedNumber Number, string Text)> named) => named.Aggregate(driveline, (car, each) => each.Number.Free(car, each.Number.Position));

    /// <summary>The driveline with the numbers put in.</summary>
    public static Parsed<Driveline> Put(Driveline driveline, IReadOnlyList<(TriedNumber Number, string Text)> named)
    {
        if (named.GroupBy(each => each.Number).FirstOrDefault(group => group.Count() > 1) is { } twice)
            return new Refusal("number", Spoken($"The {twice.Key.Words} is said a second time: say it once."), "torque rating 300 Nm");

        return Parsed.From(() => named.Aggregate(driveline, (car, each) => each.Number.On(car, each.Text)));
    }

    private static TriedNumber Of(Position position, Spec spec, Func<Driveline, Known, Driveline?> put) => new(position, spec.Line().Words, spec.Line().Told, put);

    private static TriedNumber OfEngine(Spec spec, Func<Engine, Known, Engine> put)
        => Of(Position.Engine, spec, (car, number) => car.Engine is { } engine ? car with { Engine = put(engine, number) } : null);

    private static TriedNumber OfGearbox(Spec spec, Func<Transmission, Known, Transmission> put)
        => Of(Position.Transmission, spec, (car, number) => car.Transmission is { } box ? car with { Transmission = put(box, number) } : null);

    private static TriedNumber OfTyres(Spec spec, Func<TyreSet, Known, TyreSet> put)
        => Of(Position.Tyres, spec, (car, number) => car.Tyres is { } tyres ? car with { Tyres = put(tyres, number) } : null);

    private static TriedNumber OfWheels(Spec spec, Func<Wheel, Known, Wheel> put) => Of(Position.Tyres, spec, (car, number) => OnWheels(car, wheel => put(wheel, number)));

    private static Driveline? OnWheels(Driveline car, Func<Wheel, Wheel> put) => car.Tyres is { } tyres ? car with { Tyres = tyres with { Wheel = put(tyres.Wheel ?? new()) } } : null;

    private static IEnumerable<TriedNumber> OfAxles(Spec spec, Func<Axle, Known, Axle> put) => OnAxles(spec.Line().Words, spec.Line().Told, put);

    private static IEnumerable<TriedNumber> OnAxles(Later words, Func<string, Known> told, Func<Axle, Known, Axle> put)
        => ((Position[])[Position.RearAxle, Position.FrontAxle]).Select(position => new TriedNumber(position, words, told, (car, number) => car.AxleAt(position) is { } axle ? BothAxles.At(car, position, put(axle, number)) : null));

    private static Known Idle(string text)
    {
        var idle = CruiseGoal.ReadEngineSpeed(text).OrRefuse();
        return new(idle.ToMeasured(Spoken("idle")), Source.OwnersWord, idle.InWords);
    }

    private static Known Hub(string text)
        => new(QuotedRatio.ReadMeasured(text, RatioRange.Hub, Spoken("hub reduction")).OrRefuse(), Source.OwnersWord, QuotedRatio.Read(text, RatioRange.Hub).OrRefuse().InWords);

    private static Known Studs(string text)
        => QuantityText.ReadPlain(text, Kind.Number).OrRefuse() is var studs && double.IsInteger(studs.Value)
            ? new(studs.Value, Source.OwnersWord, studs.InWords)
            : throw new RefusedException("studs", Spoken($"{Shown.Quoted(text)} is no number of studs."), "5");

    // The pair of gears stays, and turns the wheels through another hub.
    private static Axle Hubbed(Axle axle, Known hub) => axle with
    {
        HubReduction = hub,
        Quoted = null,
        Ratio = axle.Ratio is { } ratio
            ? ratio with { Value = ratio.Value / (axle.HubReduction?.Value ?? 1) * hub.Value, Says = axle.HubReduction is null ? Spoken($"{ratio.Says}, hub {hub.Says}") : Spoken($"its gears as they are, hub {hub.Says}") }
            : null,
    };

    // A ratio typed beside a hub reduction is of the pair of gears, as on the axle's page.
    private static Driveline WithoutHub(Driveline car, Position position) => car.AxleAt(position) is { } axle ? BothAxles.At(car, position, axle with { HubReduction = null }) : car;
}

/// <summary>One number that a part has beside the one it is known by.</summary>
/// <param name="Position">Whose.</param>
/// <param name="Words">What it is called on the part's page.</param>
/// <param name="Told">Reads it; refuses what means nothing.</param>
/// <param name="Put">The driveline with it; null where no such part is fitted.</param>
internal sealed record TriedNumber(Position Position, Later Words, Func<string, Known> Told, Func<Driveline, Known, Driveline?> Put)
{
    /// <summary>Takes it off a part whose other numbers are told without it.</summary>
    public Func<Driveline, Position, Driveline> Free { get; init; } = (car, _) => car;

    /// <summary>What stands behind its name, in the language spoken or in the one of the code, as a plan may be read in either; null where another word stands there.</summary>
    public string? Behind(string typed) => NamedNumbers.Behind(Words.Text, typed) ?? NamedNumbers.Behind(Words.ToString(), typed);

    /// <exception cref="RefusedException">The text means nothing, or no such part is fitted.</exception>
    public Driveline On(Driveline driveline, string text)
    {
        var told = Parsed.From(() => Told(text));
        if (told.Refusal is { Example.Length: > 0 } refused) throw new RefusedException(refused with { Example = $"{Words} {refused.Example}" }); // what would be right stands behind its name

        return Put(driveline, told.OrRefuse()) ?? throw new RefusedException("number", Spoken($"No {Position.InWords()} is fitted whose {Words} could be tried: say what it is first."), "");
    }
}
