using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Tui.Plans;

/// <summary>Any other number of a part, behind its name on the part's page: <c>3.36; torque rating 5000 Nm</c>.</summary>
internal static class TriedNumbers
{
    private static readonly IReadOnlyList<TriedNumber> All =
    [
        OfEngine(Spec.LowestPull, (engine, number) => engine with { LowestPull = number }),
        OfEngine(Spec.CriticalAltitude, (engine, number) => engine with { CriticalAltitude = number }),
        OfEngine(Spec.PilotBore, (engine, number) => engine with { Rear = engine.Rear with { PilotBore = number } }),
        OfGearbox(Spec.TorqueRating, (box, number) => box with { TorqueRating = number }),
        OfGearbox(Spec.ClutchRating, (box, number) => box with { Front = box.Front with { ClutchRating = number } }),
        OfGearbox(Spec.Spigot, (box, number) => box with { Front = box.Front with { Spigot = number } }),
        OfGearbox(Spec.Reverse, (box, number) => box with { Reverse = number }),
        new(Position.TransferCase, Spec.TorqueRating, (car, number) => car.TransferCase is { } box ? car with { TransferCase = box with { TorqueRating = number } } : null),
        .. OfAxles(Spec.TorqueRating, (axle, number) => axle with { TorqueRating = number }),
        .. OfAxles(Spec.LowStep, (axle, number) => axle with { LowStep = number }),
        .. OfAxles(Spec.HubFaces, (axle, number) => axle with { HubFaces = number }),
        .. OfAxles(Spec.Perches, (axle, number) => axle with { Perches = number }),
        .. OfAxles(Spec.PinionToPerch, (axle, number) => axle with { PinionToPerch = number }),
        .. OfAxles(Spec.Droop, (axle, number) => axle with { Travel = (axle.Travel ?? new()) with { Droop = number } }),
        .. OfAxles(Spec.Bump, (axle, number) => axle with { Travel = (axle.Travel ?? new()) with { Bump = number } }),
        .. OfAxles(Spec.PitchCircle, (axle, number) => axle with { Hub = (axle.Hub ?? new()) with { PitchCircle = number } }),
        .. OfAxles(Spec.Bore, (axle, number) => axle with { Hub = (axle.Hub ?? new()) with { Bore = number } }),
        OfTyres(Spec.LoadedRadius, (tyres, number) => tyres with { LoadedRadius = number }),
        OfWheels(Spec.RimWidth, (wheel, number) => wheel with { RimWidth = number }),
        OfWheels(Spec.Offset, (wheel, number) => wheel with { Offset = number }),
        OfWheels(Spec.PitchCircle, (wheel, number) => wheel with { Bolting = (wheel.Bolting ?? new()) with { PitchCircle = number } }),
        OfWheels(Spec.Bore, (wheel, number) => wheel with { Bolting = (wheel.Bolting ?? new()) with { Bore = number } }),
    ];

    /// <summary>What of a part can be tried by its name, for a hint.</summary>
    public static IReadOnlyList<string> Names(Position position) => [.. All.Where(number => number.Position == position).Select(number => number.Spec.InWords())];

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

    /// <summary>The driveline with the numbers put in.</summary>
    public static Parsed<Driveline> Put(Driveline driveline, IReadOnlyList<(TriedNumber Number, string Text)> named)
    {
        if (named.GroupBy(each => each.Number).FirstOrDefault(group => group.Count() > 1) is { } twice)
            return new Refusal("number", Spoken($"The {twice.Key.Spec.InWords()} is said a second time: say it once."), "torque rating 300 Nm");

        return Parsed.From(() => named.Aggregate(driveline, (car, each) => each.Number.On(car, each.Text)));
    }

    private static TriedNumber OfEngine(Spec spec, Func<Engine, Known, Engine> put)
        => new(Position.Engine, spec, (car, number) => car.Engine is { } engine ? car with { Engine = put(engine, number) } : null);

    private static TriedNumber OfGearbox(Spec spec, Func<Transmission, Known, Transmission> put)
        => new(Position.Transmission, spec, (car, number) => car.Transmission is { } box ? car with { Transmission = put(box, number) } : null);

    private static TriedNumber OfTyres(Spec spec, Func<TyreSet, Known, TyreSet> put)
        => new(Position.Tyres, spec, (car, number) => car.Tyres is { } tyres ? car with { Tyres = put(tyres, number) } : null);

    private static TriedNumber OfWheels(Spec spec, Func<Wheel, Known, Wheel> put) => OfTyres(spec, (tyres, number) => tyres with { Wheel = put(tyres.Wheel ?? new(), number) });

    private static IEnumerable<TriedNumber> OfAxles(Spec spec, Func<Axle, Known, Axle> put) =>
    [
        new(Position.RearAxle, spec, (car, number) => car.RearAxle is { } axle ? car with { RearAxle = put(axle, number) } : null),
        new(Position.FrontAxle, spec, (car, number) => car.FrontAxle is { } axle ? car with { FrontAxle = put(axle, number) } : null),
    ];
}

/// <summary>One number that a part has beside the one it is known by.</summary>
/// <param name="Position">Whose.</param>
/// <param name="Spec">Which.</param>
/// <param name="Put">The driveline with it; null where no such part is fitted.</param>
internal sealed record TriedNumber(Position Position, Spec Spec, Func<Driveline, Known, Driveline?> Put)
{
    /// <summary>What stands behind its name, in the language spoken or in the one of the code, as a plan may be read in either; null where another word stands there.</summary>
    public string? Behind(string typed) => NamedNumbers.Behind(Spec.Line().Words.Text, typed) ?? NamedNumbers.Behind(Spec.Line().Words.ToString(), typed);

    /// <exception cref="RefusedException">The text means nothing, or no such part is fitted.</exception>
    public Driveline On(Driveline driveline, string text)
        => Put(driveline, Spec.Line().Told(text)) ?? throw new RefusedException("number", Spoken($"No {Position.InWords()} is fitted whose {Spec.InWords()} could be tried: say what it is first."), "");
}
