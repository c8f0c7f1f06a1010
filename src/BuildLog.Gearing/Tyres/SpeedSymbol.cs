namespace BuildLog.Gearing.Tyres;

/// <summary>The road speed a tyre is made for, by its speed symbol.</summary>
/// <remarks>
/// Source: symbols F to V read in Directive 92/23/EEC, annex I (French order of 24 October 1994), W and Y in a vehicle maker's support table; A1 to E as
/// in UN R30 and R54, from memory, agreeing with an independent table. H (210) comes after U (200); I, O and X are not used.
/// </remarks>
public static class SpeedSymbol
{
    private const int SlowestRead = 80;

    private static readonly (string Symbol, int KilometresPerHour)[] Table =
    [
        ("A1", 5), ("A2", 10), ("A3", 15), ("A4", 20), ("A5", 25), ("A6", 30), ("A7", 35), ("A8", 40),
        ("B", 50), ("C", 60), ("D", 65), ("E", 70), ("F", 80), ("G", 90), ("J", 100), ("K", 110), ("L", 120), ("M", 130), ("N", 140),
        ("P", 150), ("Q", 160), ("R", 170), ("S", 180), ("T", 190), ("U", 200), ("H", 210), ("V", 240), ("W", 270), ("Y", 300),
    ];

    /// <summary>Whether its speed was read in print, F to Y; the others, and letters that are no symbol, are from memory at most: they may warn, never clash.</summary>
    public static bool IsRead(string symbol) => LimitKmh(symbol) >= SlowestRead;

    /// <summary>Kilometres per hour; null for letters that are no symbol.</summary>
    public static int? LimitKmh(string symbol)
    {
        foreach (var (known, limit) in Table)
        {
            if (known == symbol) return limit;
        }

        return null;
    }
}
