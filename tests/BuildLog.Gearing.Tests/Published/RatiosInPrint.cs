using System.Globalization;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>Axle ratios printed beside their tooth counts.</summary>
internal static class RatiosInPrint
{
    public static PublishedSet Teeth() => new("Axle ratios from teeth", "service manuals, an axle maker's technical notes", Standing.Read,
    [
        Pair(47, 11, 4.27), Pair(41, 10, 4.10), Pair(40, 10, 4.00),
    ]);

    public static PublishedSet TeethFromMemory() => new("Axle ratios from teeth, older makes", "workshop manuals", Standing.FromMemory,
    [
        Pair(39, 8, 4.88), Pair(43, 8, 5.38), Pair(35, 6, 5.83), Pair(47, 10, 4.70), Pair(43, 11, 3.909, 3), Pair(37, 10, 3.70),
    ]);

    private static Figure Pair(int ring, int pinion, double printed, int decimals = 2)
        => Figure.ToPlaces(string.Create(CultureInfo.InvariantCulture, $"{ring}/{pinion}"), printed, decimals, new Teeth(ring, pinion).Ratio);
}
