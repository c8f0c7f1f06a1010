using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speedometers;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Sheets;

/// <summary>A vehicle's speedometer for paper. How it reads is the check's own number, so that sheet and finding cannot disagree.</summary>
internal static class SpeedometerOfVehicle
{
    private static readonly IReadOnlyList<double> SpeedsTold = [50, 100];

    private static readonly IReadOnlyList<double> MilesTold = [30, 60];

    /// <summary>Null where none is fitted.</summary>
    public static SpeedometerFacts? Of(VehicleOnBench bench, UnitSystem units)
    {
        if (bench.Driveline.Speedometer is not { } meter) return null;

        var share = bench.Findings.FirstOrDefault(finding => finding.Check == new SpeedometerCheck().Id)?.Value;
        var reading = share is null ? null : new Reading(share);
        return new([.. Facts(meter, reading, units)], reading is null ? null : Error(reading, units));
    }

    private static IEnumerable<LabelledLine> Facts(Speedometer meter, Reading? reading, UnitSystem units)
    {
        yield return new(Spoken("Speedometer"), meter.Name);
        yield return new(Spoken("Reads right at"), meter.Wanted is { } wanted ? PerDistance(wanted.Value, units) : null);
        yield return new(Spoken("Driven by"), meter.Drive is { } drive ? Drive(drive) : null);
        foreach (var speed in units.Speed == Units.MilePerHour ? MilesTold : SpeedsTold)
        {
            yield return new(Spoken($"Shows at a true {Rounded.WithUnit(Rounded.Fixed(speed, 0), units.Speed)}"),
                reading is null ? null : Rounded.WithInterval(reading.Shown(units.Speed.ToBase(speed)), units.Speed));
        }

        yield return new(Spoken("Odometer"), reading is null ? null : Odometer(reading.OdometerError));
        yield return new(Spoken("Rule"), Spoken("UN R39, 5.3: from the truth to 10 % + 4 km/h above it"));
    }

    private static string Odometer(Measured error)
        => $"{Rounded.WithInterval(error.Value < 0 ? -error : error, Units.PercentUnit)} {(error.Value < 0 ? Spoken("behind") : Spoken("ahead"))}";

    private static string PerDistance(Measured perMetre, UnitSystem units)
    {
        var distance = units.Speed == Units.MilePerHour ? Units.Mile : Units.Kilometre;
        var turns = perMetre * distance.Factor;
        var number = turns.IsExact ? Rounded.Exact(Math.Round(turns.Value, 1)) : Rounded.WithInterval(turns, Units.One);
        return Spoken($"{number} turns or pulses a {(distance == Units.Mile ? Spoken("mile") : Spoken("kilometre"))}");
    }

    private static string Drive(SpeedometerDrive drive)
    {
        var gears = drive is { DriveTeeth: { } driving, DrivenTeeth: { } driven }
            ? Spoken($"gears {driving}/{driven}")
            : Spoken($"{Rounded.WithInterval(drive.PerTurn / drive.Correction, Units.One)} pulses a turn");
        var correction = drive.Correction.Value == 1 ? "" : Spoken($", corrected by {Rounded.WithInterval(drive.Correction, Units.One)}");
        var at = drive.Pickup switch
        {
            Pickup.GearboxOutput => Spoken("at the gearbox output"),
            Pickup.Wheel => Spoken("at a wheel"),
            _ => Spoken("at the propshaft"),
        };
        return $"{gears} {at}{correction}";
    }

    private static CurveChart Error(Reading reading, UnitSystem units)
    {
        CurvePoint At(double realKmh, double beyondKmh) => new(
            units.Speed.FromBase(Units.KilometrePerHour.ToBase(realKmh)), units.Speed.FromBase(Units.KilometrePerHour.ToBase(beyondKmh)));

        var points = ErrorCurve.Of(reading);
        return new()
        {
            Title = Spoken("Shown beyond the truth, against UN R39"),
            Across = Spoken($"true speed, {units.Speed}"),
            Up = Spoken($"shown minus true, {units.Speed}"),
            Curves =
            [
                new(Spoken("this speedometer"), CurveKind.Does, [.. points.Select(point => At(point.Real, point.Error.Value))]),
                new(Spoken("most allowed"), CurveKind.Limit, [.. points.Select(point => At(point.Real, SpeedometerLaw.Shown(point.Real).High - point.Real))]),
                new(Spoken("least allowed"), CurveKind.Limit, [.. points.Select(point => At(point.Real, 0))]),
            ],
        };
    }
}
