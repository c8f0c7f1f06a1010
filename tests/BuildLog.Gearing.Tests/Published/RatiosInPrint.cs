using System.Globalization;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Speeds;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>Axle ratios printed beside their tooth counts or their counted turns, and products of ratios.</summary>
internal static class RatiosInPrint
{
    public static PublishedSet Teeth() => new("Axle ratios from teeth", "service manuals, an axle maker's technical notes, makers' final-drive tables", Standing.Read,
    [
        Pair(47, 11, 4.27), Pair(41, 10, 4.10), Pair(41, 12, 3.42), Pair(40, 13, 3.08), Pair(40, 10, 4.00), Pair(41, 11, 3.73), Pair(45, 13, 3.46),
        Pair(53, 14, 3.79),
    ]);

    public static PublishedSet TeethFromMemory() => new("Axle ratios from teeth, older makes", "workshop manuals", Standing.FromMemory,
    [
        Pair(39, 8, 4.88), Pair(43, 8, 5.38), Pair(35, 6, 5.83), Pair(47, 10, 4.70), Pair(43, 11, 3.909, 3), Pair(37, 10, 3.70),
    ]);

    public static PublishedSet Turns() => new("Axle ratio from counted turns", "trade magazine how-to", Standing.Read,
    [
        Figure.ToPlaces("18 propshaft turns, 10 turns of one wheel", 3.6, 1, Counted("10:18", Wheels.OneHeld)),
        Figure.ToPlaces("36 propshaft turns, 10 turns of both", 3.6, 1, Counted("10:36", Wheels.Together)),
    ]);

    public static PublishedSet Products() => new("Overall ratios", "trade press", Standing.Read,
    [
        Figure.ToPlaces("6.32 · 2.72 · 4.56", 78.39, 2, Overall(6.32, 2.72, 4.56)),
        Figure.ToPlaces("6.32 · 2.72 · 4 · 4.56", 313.55, 2, Overall(6.32, 2.72, 4.56, 4)),
        Figure.ToPlaces("3.31 · 3.06", 10.128, 2, Overall(3.06, 1, 3.31)),
    ]);

    private static Figure Pair(int ring, int pinion, double printed, int decimals = 2)
        => Figure.ToPlaces(string.Create(CultureInfo.InvariantCulture, $"{ring}/{pinion}"), printed, decimals, new Teeth(ring, pinion).Ratio);

    private static double Counted(string turns, Wheels wheels)
        => TurnCount.Of([TurnReading.Read(turns, wheels).OrRefuse()], new CountPrecision()).Ratio.Value;

    private static double Overall(double gear, double transfer, double axle, double overdrive = 1)
        => new SpeedRelation { Gear = gear, Transfer = transfer, Axle = axle, Overdrive = Measured.Exact(overdrive) }.OverallRatio.Value;
}
