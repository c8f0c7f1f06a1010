using CsCheck;

namespace BuildLog.Gearing.Tests.Quantities;

/// <summary>Whatever can be typed.</summary>
internal static class AnyText
{
    // Pieces that readers look for, glued in any order, beside any characters at all.
    private static readonly string[] Pieces =
    [
        "planetary ", "kPa", "°C", "75/30", "29/19", "0", "1", "9", "10", "20.5", "205", "65", "15", "94", "1,234", "4.10", "99999999999", ".", ",", "/", ":", " ", "-", "+", "±", "u=", "%", "½", "⅛", "\"", "'",
        "''", "in", "mm", "m", "km/h", "rpm", "rev/min", "1/min", "at most", "R", "ZR", "D", "B", "LT", "P", "H", "A8", "m2", "m²", "Nm", "lb-ft", "kW", "(", ")", "XL", "C", "x", "31", "6.00", "G78", "GR", "PR", "\n", "\t", "\u001b[31m",
        "\0", "İ", "ı", "ß", "\ud83d", "𝟙", "٣", "e", "E9", "NaN", "∞", "M+S", "€", "EUR", "kr", "h", "min", "May", "2026", "0001", "9999", "spring ", "before ", "about ", " to ", "today", "~", ".pdf", "axle", ";", "air ",
    ];

    /// <summary>What readers look for glued in any order, any characters at all, and long numbers.</summary>
    public static Gen<string> Of { get; } = Gen.Frequency(
        (6, Gen.Int[0, Pieces.Length - 1].Array[0, 12].Select(picks => string.Concat(picks.Select(pick => Pieces[pick])))),
        (2, Gen.String[Gen.Char, 0, 40]),
        (1, Gen.String[Gen.Char["0123456789.,/:' \"-"], 0, 250]));
}
