using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speedometers;

namespace BuildLog.Gearing.Checks;

/// <summary>The speedometer shows no less than the truth, and not much more.</summary>
/// <remarks>
/// <code>q = N / W within 1 … 1.1 + 4 / 130</code>
/// <para>Law and its source see <see cref="SpeedometerLaw"/>; q see <see cref="Reading"/>. The head's own error is not in it.</para>
/// </remarks>
public sealed class SpeedometerCheck : ICheck
{
    private const string Limit = "UN Regulation No. 39, par. 5.3";

    /// <summary>Gears named as a cure, the truest first.</summary>
    private const int MostGears = 3;

    private static readonly Window Lawful = SpeedometerLaw.Share();

    /// <inheritdoc/>
    public string Id => "speedometer";

    /// <inheritdoc/>
    public string Title => "Speedometer";

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline.Speedometer is not { } meter) return [];

        var missing = Lacking(driveline, meter).ToList();
        return missing.Count > 0
            ? [this.Open([driveline.DrivingPosition, Position.Speedometer], "Whether the speedometer reads right", missing, Limit)]
            : [Judge(driveline, meter, meter.Wanted!.Value, meter.Drive!)];
    }

    /// <summary>What it shows against the truth; null while a part or a number is missing.</summary>
    public static Reading? Reads(Driveline driveline)
        => driveline.Speedometer is { } meter && !Lacking(driveline, meter).Any() ? Reads(driveline, meter) : null;

    // Nothing is lacking.
    private static Reading Reads(Driveline driveline, Speedometer meter)
        => Reading.Of(
            CableTurns.PerMetre(meter.Drive!, driveline.DrivingAxle?.Ratio?.Value ?? 1, driveline.TransferCase?.High?.Value ?? 1, driveline.DrivingTyres!.RollingCircumference!.Value),
            meter.Wanted!.Value);

    private Finding Judge(Driveline driveline, Speedometer meter, Measured wanted, SpeedometerDrive drive)
    {
        var (axle, transfer, tyre) = (driveline.DrivingAxle?.Ratio?.Value ?? 1, driveline.TransferCase?.High?.Value ?? 1, driveline.DrivingTyres!.RollingCircumference!.Value);
        var reading = Reads(driveline, meter);
        var error = reading.OdometerError;
        return this.Judged(new(
            [driveline.DrivingPosition, Position.Speedometer], reading.Share, Units.One, Lawful,
            $"At a true {AtRound((v, unit) => Said.Number(v, unit, 0))} the speedometer shows {AtRound((v, unit) => Said.Number(reading.Shown(v), unit, 0))}; wanted {AtRound(Allowed)}. "
                + $"The odometer runs {Said.Number(error.Value < 0 ? -error : error, Units.PercentUnit, 1)} {(error.Value < 0 ? "behind" : "ahead")}.{InLow(driveline, drive, reading)}",
            Limit)
        {
            Cures = [.. Gears(drive, axle, transfer, tyre, wanted)],
            Windows = [PartWindow.Proportional(Position.Speedometer, "speedometer correction factor", Units.One, reading.Share / drive.Correction, Lawful)],
        });
    }

    // A sentence speaks of a round road speed, whichever unit it is said in.
    private static SaidNumber AtRound(Func<double, Unit, SaidNumber> at)
        => new(Units.KilometrePerHour, shown => at(shown.ToBase(shown == Units.MilePerHour ? 60 : 100), shown).ToString());

    private static SaidNumber Allowed(double roadSpeed, Unit unit)
    {
        var kmh = Units.KilometrePerHour;
        var law = SpeedometerLaw.Shown(kmh.FromBase(roadSpeed));
        return Said.Between(kmh.ToBase(law.Low), kmh.ToBase(law.High), unit, 0);
    }

    // What is driven before the axle turns faster in its low, and a wheel does not.
    private static Sentence InLow(Driveline driveline, SpeedometerDrive drive, Reading reading)
        => drive.Pickup != Pickup.Wheel && driveline.DrivingAxle?.LowStep is { } step
            ? Said.As($" In the axle's low it shows {AtRound((v, unit) => Said.Number(reading.Shown(v) * step.Value, unit, 0))} there.")
            : "";

    private static IEnumerable<string> Gears(SpeedometerDrive drive, Measured axle, Measured transfer, Measured tyre, Measured wanted)
        => drive.DrivenTeeth is null ? []
            : DrivenGear.Within(DrivenGear.Exactly(drive, axle, transfer, tyre, wanted), Lawful)
                .Take(MostGears)
                .Select(gear => $"a driven gear of {gear.Teeth} teeth: reads {Said.Number(gear.Reading.OdometerError, Units.PercentUnit, 1)} high");

    private static IEnumerable<Missing> Lacking(Driveline driveline, Speedometer meter)
    {
        var atWheel = meter.Drive?.Pickup == Pickup.Wheel;
        if (meter.Wanted is null) yield return new("what the speedometer wants is not known", "read the small number on its dial: cable turns a mile or a kilometre");
        if (meter.Drive is null) yield return new("what drives it is not known", "count the teeth of its drive and driven gears, or the cable's turns for a turn of the propshaft");
        if (!atWheel && driveline.DrivingAxle?.Ratio is null) yield return new($"the {driveline.DrivingPosition.InWords()} ratio is not known", "count the axle's turns: ten wheel turns, one wheel held");
        if (meter.Drive?.Pickup == Pickup.GearboxOutput && driveline.TransferCase is { High: null })
            yield return new("the transfer case's high ratio is not known", "enter the transfer case's high ratio");
        if (driveline.DrivingTyres?.RollingCircumference is null) yield return new("the tyres' circumference is not known", "roll the tyres out, or enter their size");
    }
}
