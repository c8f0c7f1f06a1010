using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speedometers;

namespace BuildLog.Gearing.Tests.Published.Examples;

/// <summary>Cable turns, pulses and driven gears.</summary>
internal static class SpeedometerExamples
{
    private const double Mile = 1609.344;

    // Printed 908 is 908.9 cut off, and 6.15 is 6.155; 8833.3 was worked out with a rounded circumference.
    public static IEnumerable<Figure> Printed =>
    [
        Figure.ToPlaces("G1 867 wheel turns a mile, 3.7, 5/12: a mile (a club engineer's article)", 1336.6, 1, Mile * Turns(SpeedometerDrive.Gears(5, 12), 3.7, Mile / 867)),
        new("G2 2.085 m, 3.79, 0.5: a kilometre (trade text)", 908, 1000 * Turns(SpeedometerDrive.Pulses(0.5), 3.79, 2.085), 1),
        Figure.ToPlaces("G4 27.5 cable turns in ten wheel turns of 202 cm: a metre (trade text)", 1.36, 2, CableTurns.Pushed(27.5, 20.2).Value),
        new("G6 4 pulses, 3.27, 2.125 m: a metre (trade text)", 6.15, Turns(SpeedometerDrive.Pulses(4), 3.27, 2.125), 0.006),
        new("G7 16 pulses at the wheel of 22.7 in: a kilometre (trade text)", 8833.3, 1000 * Turns(SpeedometerDrive.Pulses(16, Pickup.Wheel), 3.25, Math.PI * 22.7 * 0.0254), 0.3),
        Figure.ToPlaces("G8 16 pulses at the propshaft, 3.25, 917 a mile: a mile (trade text)", 47684, 0, Mile * Turns(SpeedometerDrive.Pulses(16), 3.25, Mile / 917)),
        Figure.ToPlaces("G9 a mile in 62 s: mph (trade forum)", 58, 0, Units.MilePerHour.FromBase(Mile / 62)),
        Figure.ToPlaces("G10 20 teeth show 50 for 58: teeth (maker's service data of 1998)", 17.2, 1, DrivenGear.Exactly(20, Reading.Observed(50, 58)).Value),
    ];

    public static IEnumerable<Figure> WorkedOut =>
    [
        WorkedExamples.Sheet("G3 drive gear 8, 3.73, 780 and 1000 turns a mile: driven teeth", 23.2752,
            DrivenGear.Exactly(SpeedometerDrive.Gears(8, 23), 3.73, 1, Mile / 780, 1000 / Mile).Value),
        WorkedExamples.Sheet("G5 16 pulses at the propshaft, 3.73, 780 a mile: a mile (data logger's manual)", 46550.4, Mile * Turns(SpeedometerDrive.Pulses(16), 3.73, Mile / 780)),
    ];

    private static double Turns(SpeedometerDrive drive, double axle, double circumference) => CableTurns.PerMetre(drive, axle, Measured.Exact(1), circumference).Value;
}
