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
/// <para>q is what a measured distance showed, where one was driven with these parts; else what gears, axle and tyres make it.</para>
/// </remarks>
public sealed class SpeedometerCheck : ICheck, ILookedAt
{
    private static string Limit => Spoken("UN Regulation No. 39, par. 5.3");

    /// <summary>Gears named as a cure, the truest first.</summary>
    private const int MostGears = 3;

    private static readonly (double Kmh, double Mph) Usual = (100, 60), TopOfTheRange = (SpeedometerLaw.To, 81);

    /// <summary>What it may show, as a share of the truth.</summary>
    internal static readonly Window Lawful = SpeedometerLaw.Share();

    /// <inheritdoc/>
    public string Id => "speedometer";

    /// <inheritdoc/>
    public string Title => Spoken("Speedometer");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline.Speedometer is not { } meter) return [];

        var driven = Driven(driveline);
        return (driven is not null ? new Reading(driven.Value) : Computed(driveline)) is { } reading
            ? [Judge(driveline, meter.Drive, reading, driven is null ? "" : Spoken($" So found by the {driven.Says}."))]
            : [this.Open([driveline.DrivingPosition, Position.Speedometer], Spoken("Whether the speedometer reads right"), Lacking(driveline, meter), Limit)];
    }

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
        => driveline is { Speedometer: null, Transmission: not null } && driveline.DrivingAxle is not null
            ? [new(Position.Speedometer, Spoken("turns it wants"), Missing.ReadDial)]
            : [];

    /// <summary>What gears, axle and tyres make it show against the truth; null while a part or a number is missing.</summary>
    public static Reading? Computed(Driveline driveline)
        => driveline.Speedometer is { } meter && !Lacking(driveline, meter).Any()
            ? Reading.Of(
                CableTurns.PerMetre(meter.Drive!, driveline.DrivingAxle?.Ratio?.Value ?? 1, driveline.TransferCase?.High?.Value ?? 1, driveline.DrivingTyres!.RollingCircumference!.Value),
                meter.Wanted!.Value)
            : null;

    /// <summary>What a measured distance found, beside what the parts make it; null where it was not driven with these parts.</summary>
    internal static MeasuredAgain? FoundTwice(Driveline driveline)
        => Driven(driveline) is { } driven && Computed(driveline) is { } computed
            ? new(Position.Speedometer, Spoken("share of the true distance"), Units.One, driven, new(computed.Share, Source.Measured, Spoken("from its gears, the axle and the tyres")))
            : null;

    private static Known? Driven(Driveline driveline) => driveline.Driven is { } driven && driven.HoldsFor(driveline) ? driven.Share : null;

    private Finding Judge(Driveline driveline, SpeedometerDrive? drive, Reading reading, string found)
    {
        var error = reading.OdometerError;

        // What reads too high does so at the top of the range first, what reads too low at any speed.
        var round = reading.Share.Interval95.High > Lawful.High ? TopOfTheRange : Usual;
        return this.Judged(new(
            [driveline.DrivingPosition, Position.Speedometer], reading.Share, Units.One, Lawful,
            $"At a true {AtRound(round, (v, unit) => Said.Number(v, unit, 0))} the speedometer shows {AtRound(round, (v, unit) => Said.Number(reading.Shown(v), unit, 0))}; wanted {AtRound(round, Allowed)}. "
                + $"The odometer runs {Said.Number(error.Value < 0 ? -error : error, Units.PercentUnit, 1)} {(error.Value < 0 ? Spoken("behind") : Spoken("ahead"))}.{found}{InLow(driveline, drive, reading, round)}",
            Limit)
        {
            Cures = [.. Gears(drive, reading)],
            Windows = [PartWindow.Proportional(Position.Speedometer, Spoken("speedometer correction factor"), Units.One, reading.Share / (drive?.Correction ?? 1), Lawful)],
        });
    }

    // A sentence speaks of a round road speed, whichever unit it is said in.
    private static SaidNumber AtRound((double Kmh, double Mph) round, Func<double, Unit, SaidNumber> at)
        => new(Units.KilometrePerHour, shown => at(shown.ToBase(shown == Units.MilePerHour ? round.Mph : round.Kmh), shown).ToString());

    private static SaidNumber Allowed(double roadSpeed, Unit unit)
    {
        var kmh = Units.KilometrePerHour;
        var law = SpeedometerLaw.Shown(kmh.FromBase(roadSpeed));
        return Said.Between(kmh.ToBase(law.Low), kmh.ToBase(law.High), unit, 0);
    }

    // What is driven before the axle turns faster in its low, and a wheel does not.
    private static Sentence InLow(Driveline driveline, SpeedometerDrive? drive, Reading reading, (double Kmh, double Mph) round)
        => drive is { Pickup: not Pickup.Wheel } && driveline.DrivingAxle?.LowStep is { } step
            ? Said.As($" In the axle's low it shows {AtRound(round, (v, unit) => Said.Number(reading.Shown(v) * step.Value, unit, 0))} there.")
            : "";

    // Those that would surely be lawful; where none is, those that would be with the numbers as they are.
    private static IEnumerable<string> Gears(SpeedometerDrive? drive, Reading reading)
    {
        if (drive?.DrivenTeeth is not { } teeth) return [];

        var lawful = DrivenGear.Within(DrivenGear.Exactly(teeth, reading), Lawful).Where(gear => gear.Teeth != teeth && gear.IsMade).ToList();
        var sure = lawful.Where(gear => Lawful.Contains(gear.Reading.Share.Interval95)).ToList();
        return (sure.Count > 0 ? sure : lawful).Take(MostGears)
            .Select(gear => Spoken($"a driven gear of {gear.Teeth} teeth: reads {Said.Number(gear.Reading.OdometerError, Units.PercentUnit, 1)} high{(sure.Count > 0 ? "" : Spoken(", though not surely"))}"));
    }

    /// <summary>What the reading still lacks, the speedometer itself first.</summary>
    internal static IEnumerable<Missing> Lacking(Driveline driveline)
        => driveline.Speedometer is { } meter ? Lacking(driveline, meter) : [new(Spoken("no speedometer is fitted"), Spoken("enter what its dial wants, turns a mile or a kilometre"))];

    private static IEnumerable<Missing> Lacking(Driveline driveline, Speedometer meter)
    {
        var atWheel = meter.Drive?.Pickup == Pickup.Wheel;
        if (meter.Wanted is null) yield return new(Spoken("what the speedometer wants is not known"), Missing.ReadDial);
        if (meter.Drive is null) yield return new(Spoken("what drives it is not known"), Spoken("count the teeth of its drive and driven gears, or the cable's turns for a turn of the propshaft"));
        if (!atWheel) foreach (var missing in Missing.Ratio(driveline, driveline.DrivingPosition)) yield return missing;
        if (meter.Drive?.Pickup == Pickup.GearboxOutput && driveline.TransferCase is { High: null })
            yield return new(Spoken("the transfer case's high ratio is not known"), Spoken("enter the transfer case's high ratio"));
        if (driveline.DrivingTyres?.RollingCircumference is null) yield return new(Spoken("the tyres' circumference is not known"), Spoken("roll the tyres out, or enter their size"));
    }
}
