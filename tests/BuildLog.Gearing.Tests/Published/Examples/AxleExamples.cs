using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Gearing.Tests.Published.Examples;

/// <summary>Unknown axles: counted, by their teeth, by a road test.</summary>
internal static class AxleExamples
{
    // Half-widths whose standard uncertainties are the sheet's 1 km/h, 50 rev/min and 0.05 turn.
    private static readonly RoadTestPrecision Instruments = new(Math.Sqrt(3) / 3.6, 50 * Math.Sqrt(3) / 60);
    private static readonly CountPrecision TwentiethOfATurn = new(0.05 * Math.Sqrt(3), 0);

    public static IEnumerable<Figure> Printed =>
    [
        Figure.ToPlaces("A1 18 propshaft turns, 10 of one wheel (trade magazine)", 3.6, 1, Counted("10:18", Wheels.OneHeld)),
        Figure.ToPlaces("A2 36 propshaft turns, 10 of both wheels (trade magazine)", 3.6, 1, Counted("10:36", Wheels.Together)),
        Figure.ToPlaces("A3 41/11 (trade magazine)", 3.73, 2, new Teeth(41, 11).Ratio),
        Figure.ToPlaces("A4 41/12 (axle maker's technical note)", 3.42, 2, new Teeth(41, 12).Ratio),
        Figure.ToPlaces("A5 40/13 (axle maker's technical note)", 3.08, 2, new Teeth(40, 13).Ratio),
        Figure.ToPlaces("A6 45/13 (a maker's final-drive tables, 2005)", 3.46, 2, new Teeth(45, 13).Ratio),
        Figure.ToPlaces("A7 53/14 (trade text)", 3.79, 2, new Teeth(53, 14).Ratio),
    ];

    public static IEnumerable<Figure> WorkedOut =>
    [
        WorkedExamples.Sheet("A8 2500 rev/min, 2.05 m, 82.5 km/h, direct", 3.72727, Driven().Value),
        WorkedExamples.Sheet("A9 its uncertainty, circumference to 0.5 %: %", 2.39149, 100 * Driven(0.005).RelativeUncertainty),
        WorkedExamples.Sheet("A10 hub reduction 2.00 behind 3.90", 7.8, HubReduction.AxleRatio(3.90, 2.00).Value),

        // The sheet has 3.33 and 6.67; nobody counts a third of a turn.
        new("A11 3.70 from 3.73, both wheels: whole turns", 4, TurnCount.WheelTurnsToTell(3.70, 3.73, Wheels.Together, TwentiethOfATurn), 0),
        new("A12 3.70 from 3.73, one wheel held: whole turns", 7, TurnCount.WheelTurnsToTell(3.70, 3.73, Wheels.OneHeld, TwentiethOfATurn), 0),
    ];

    private static double Counted(string turns, Wheels wheels) => TurnCount.Of([TurnReading.Read(turns, wheels).OrRefuse()], new CountPrecision()).Ratio.Value;

    private static Measured Driven(double spread = 0)
        => RoadTest.AxleRatio(82.5 / 3.6, 2500 / 60.0, 1, Measured.From(2.05, new Input("circumference", 2.05 * spread, new Evidence("roll-out"))), Instruments);
}
