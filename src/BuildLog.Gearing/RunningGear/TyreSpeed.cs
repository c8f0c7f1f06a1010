using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.RunningGear;

/// <summary>The speed a tyre must be made for, by the speed of the vehicle.</summary>
/// <remarks>
/// <code>approval of one country:  v ≤ 150 km/h: 1.03 v + 3.5;  above: 1.01 v + 6.5        European approval, by one maker: 1.05 v</code>
/// <para>v top speed in km/h. A tyre slower than the vehicle is not permitted; what lies between that and the rule is a margin for tolerance.</para>
/// <para>Source: a vehicle maker's service text on choosing the symbol, with its three examples; Regulation (EU) 3/2014, annex XV, for the principle.</para>
/// </remarks>
public static class TyreSpeed
{
    /// <summary>Km/h; the national rule.</summary>
    public static double Required(double topSpeedKmh) => topSpeedKmh <= 150 ? (1.03 * topSpeedKmh) + 3.5 : (1.01 * topSpeedKmh) + 6.5;

    /// <summary>Km/h; the European rule as one maker applies it.</summary>
    public static double RequiredByApproval(double topSpeedKmh) => 1.05 * topSpeedKmh;

    /// <summary>The slowest symbol that is fast enough; null above the table.</summary>
    public static string? SymbolFor(double requiredKmh)
        => Symbols.FirstOrDefault(symbol => SpeedSymbol.LimitKmh(symbol) >= requiredKmh - 1e-9);

    // By speed, which is not by letter.
    private static readonly string[] Symbols =
        ["A1", "A2", "A3", "A4", "A5", "A6", "A7", "A8", "B", "C", "D", "E", "F", "G", "J", "K", "L", "M", "N", "P", "Q", "R", "S", "T", "U", "H", "V", "W", "Y"];
}
