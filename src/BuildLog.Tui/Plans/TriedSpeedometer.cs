using BuildLog.Data.Specs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speedometers;

namespace BuildLog.Tui.Plans;

/// <summary>Other gears, pulses or turns wanted of a speedometer: <c>gears 8/21; dial 1000 per km</c>.</summary>
internal static class TriedSpeedometer
{
    private const string Example = "gears 8/21; dial 1000 per km";
    private const string PerMile = "per mile";
    private const string PerKilometre = "per km";

    private static readonly IReadOnlyList<string> Words = ["gears", "pulses", "correction", "dial"];

    public static Parsed<Speedometer> Read(string text, string name, Speedometer? fitted)
        => NamedNumbers.Read(text, Spoken("the speedometer"), Words, Example).Then(numbers => Parsed.From(() => With(fitted ?? new(name), name, numbers)));

    /// <summary>What makes this drive again where it is typed.</summary>
    public static string Typed(SpeedometerDrive drive) => drive is { DriveTeeth: { } on, DrivenTeeth: { } to }
        ? FormattableString.Invariant($"gears {on}/{to}")
        : $"correction {Rounded.Typed(drive.Correction.Value)}";

    private static Speedometer With(Speedometer meter, string name, IReadOnlyDictionary<string, string> numbers) => meter with
    {
        Name = name,
        Drive = Drive(meter.Drive, numbers),
        Wanted = numbers.TryGetValue("dial", out var dial) ? Dial(dial) : meter.Wanted,
    };

    private static SpeedometerDrive? Drive(SpeedometerDrive? fitted, IReadOnlyDictionary<string, string> numbers)
    {
        var pickup = fitted?.Pickup ?? Pickup.Propshaft;
        var correction = numbers.TryGetValue("correction", out var factor) ? Spec.Correction.Line().Read(factor).OrRefuse().Value : fitted?.Correction.Value ?? 1;
        if (numbers.ContainsKey("gears") && numbers.ContainsKey("pulses"))
            throw new RefusedException("speedometer", Spoken("Gears turn a cable, pulses come from a sender: say one of the two."), Example);
        if (numbers.TryGetValue("gears", out var gears))
        {
            return gears.Split('/', StringSplitOptions.TrimEntries) is [var drive, var driven] && int.TryParse(drive, out var on) && int.TryParse(driven, out var to)
                ? SpeedometerDrive.Gears(on, to, pickup, correction)
                : throw new RefusedException("speedometer", Spoken($"{Shown.Quoted(gears)} are no two gears: teeth on the shaft, then teeth on the cable."), Example);
        }

        if (numbers.TryGetValue("pulses", out var pulses)) return SpeedometerDrive.Pulses(Spec.PulsesPerTurn.Line().Read(pulses).OrRefuse().Value, pickup, correction);
        if (factor is null) return fitted;
        return fitted switch
        {
            null => throw new RefusedException("speedometer", Spoken("There is nothing to correct: say its gears or pulses too."), Example),
            { DriveTeeth: { } on, DrivenTeeth: { } to } => SpeedometerDrive.Gears(on, to, pickup, correction),
            _ => SpeedometerDrive.Pulses(fitted.PerTurn / fitted.Correction, pickup, correction),
        };
    }

    private static Known Dial(string text)
    {
        var distance = text.EndsWith(PerMile, StringComparison.OrdinalIgnoreCase) ? (Words: PerMile, Unit: Units.Mile)
            : text.EndsWith(PerKilometre, StringComparison.OrdinalIgnoreCase) ? (Words: PerKilometre, Unit: Units.Kilometre)
            : throw new RefusedException("per", Spoken($"{Shown.Quoted(text)}: say whether the dial means a kilometre or a mile."), Example);
        return new(Spec.TurnsWanted.Line().Read(text[..^distance.Words.Length].Trim()).OrRefuse().Value / distance.Unit.Factor, Source.OwnersWord, text);
    }
}
