using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Speedometers;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>Speedometer drives and the law in print.</summary>
internal static class SpeedometerTables
{
    private const double Mile = 1609.344;

    public static PublishedSet Law() => new("Speeds that may be shown", "UN Regulation No. 39 as quoted in the press, ADR 18/03 fact sheet", Standing.Read,
    [
        .. new[] { (50, 59), (70, 81), (90, 103), (110, 125), (130, 147), (100, 114) }.SelectMany(row => new[]
        {
            new Figure($"{row.Item1} km/h, least", row.Item1, SpeedometerLaw.Shown(row.Item1).Low, 1e-9),
            new Figure($"{row.Item1} km/h, most", row.Item2, SpeedometerLaw.Shown(row.Item1).High, 1e-9),
        }),
    ]);

    // Printed 908 is 908.9 cut off, and 6.15 is 6.155; 8833.3 was worked out with a rounded circumference.
    public static PublishedSet Drives() => new("Cable turns and pulses", "club engineer's article, trade forums, a data logger's manual", Standing.Read,
    [
        Figure.ToPlaces("867 wheel turns a mile, 3.7, 5/12: a mile", 1336.6, 1, Mile * Turns(SpeedometerDrive.Gears(5, 12), 3.7, Mile / 867)),
        new("2.085 m, 3.79, 0.5: a kilometre", 908, 1000 * Turns(SpeedometerDrive.Pulses(0.5), 3.79, 2.085), 1),
        Figure.ToPlaces("27.5 cable turns in ten wheel turns of 202 cm: a metre", 1.36, 2, CableTurns.Pushed(27.5, 20.2).Value),
        new("4 pulses, 3.27, 2.125 m: a metre", 6.15, Turns(SpeedometerDrive.Pulses(4), 3.27, 2.125), 0.006),
        new("16 pulses at the wheel of 22.7 in: a kilometre", 8833.3, 1000 * Turns(SpeedometerDrive.Pulses(16, Pickup.Wheel), 3.25, Math.PI * 22.7 * 0.0254), 0.3),
        Figure.ToPlaces("16 pulses at the propshaft, 3.25, 917 a mile: a mile", 47684, 0, Mile * Turns(SpeedometerDrive.Pulses(16), 3.25, Mile / 917)),
    ]);

    public static PublishedSet Errors() => new("Readings, errors and driven gears", "club engineer's article, maker's service data of 1998, trade forums", Standing.Read,
    [
        Figure.ToPlaces("gets 1336.6, wants 1325: % over", 0.9, 1, 100 * Reading.Of(1336.6, 1325).OdometerError.Value),
        Figure.ToPlaces("gets 1336.6, wants 1350: % under", -1.0, 1, 100 * Reading.Of(1336.6, 1350).OdometerError.Value),
        Figure.ToPlaces("gets 908, wants 920: % low", -1.3, 1, 100 * Reading.Of(908, 920).OdometerError.Value),
        Figure.ToPlaces("19.5 read for 20: %", -2.5, 1, 100 * Reading.OdometerObserved(19.5, 20).OdometerError.Value),
        Figure.ToPlaces("20 teeth show 50 for 58: teeth", 17.2, 1, DrivenGear.Exactly(20, Reading.Observed(50, 58)).Value),
        Figure.ToPlaces("a mile in 62 s: mph", 58, 0, Reading.Observed(60, 60).Real(3600 / 62.0).Value),
    ]);

    private static double Turns(SpeedometerDrive drive, double axle, double circumference) => CableTurns.PerMetre(drive, axle, Measured.Exact(1), circumference).Value;
}
