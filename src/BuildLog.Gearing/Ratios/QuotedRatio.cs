using System.Globalization;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>A ratio printed on a tag, in a table or quoted by somebody: known to half its last digit, and only as true as its teller.</summary>
/// <remarks>
/// u = half the last digit / √3 (JCGM 100:2008, F.2.2.1). A quoted 1, 1.0 or 1.00 is a direct gear and exact, and so is a fraction. A typed ±
/// takes the place of the last digit, as the rectangle that has its u.
/// </remarks>
public sealed record QuotedRatio(double Ratio, double HalfLastDigit, string Text)
{
    /// <summary>i as quoted; above zero.</summary>
    public double Ratio { get; init => field = value.AboveZero(Spoken("A ratio"), "4.10"); } = Ratio.AboveZero(Spoken("A ratio"), "4.10");

    /// <summary>Half-width of the rectangle the rounding leaves; 0 where the ratio is exact.</summary>
    public double HalfLastDigit { get; init => field = Rounding(value); } = Rounding(HalfLastDigit);

    /// <summary>As quoted, for whoever reads it; see <see cref="AsWritten"/>.</summary>
    public string InWords => AsWritten.InWords(Text, Units.One);

    /// <summary>Reads <c>4.10</c>, <c>41/10</c>, <c>4.08±0.03</c>; a ratio outside the range is refused.</summary>
    public static Parsed<QuotedRatio> Read(string text, RatioRange range)
        => range.Read(text).Then<QuotedRatio>(typed =>
            new QuotedRatio(typed.Value, typed.StandardUncertainty > 0 ? typed.StandardUncertainty * Math.Sqrt(3) : HalfOfLast(text), text.Trim()));

    /// <summary>The value with its rounding as the one input; a typed ± takes the rounding's place.</summary>
    public static Parsed<Measured> ReadMeasured(string text, RatioRange range, string name)
        => range.Read(text).Then(typed =>
            typed.StandardUncertainty > 0 ? typed.ToMeasured(name) : Read(text, range).Then<Measured>(quoted => quoted.ToMeasured(name)));

    /// <summary>u = half the last digit / √3.</summary>
    public double StandardUncertainty => HalfLastDigit / Math.Sqrt(3);

    /// <summary>The ratio with its rounding as one input of that name; exact where there is none.</summary>
    public Measured ToMeasured(string name)
        => HalfLastDigit == 0
            ? Ratio
            : Measured.From(Ratio, Input.Rectangular(Spoken($"{name}, last digit of {InWords}"), HalfLastDigit, new Evidence(Spoken($"{name} as quoted"), _ => Spoken($"count the {name} or its teeth, since {InWords} is only quoted"))));

    /// <summary>The count and the quoted ratio can both be true: |difference| ≤ t √(u² + u_quoted²).</summary>
    public bool Agrees(Measured counted)
    {
        var u = Math.Sqrt(Math.Pow(counted.StandardUncertainty, 2) + Math.Pow(StandardUncertainty, 2));
        return Math.Abs(counted.Value - Ratio) <= (counted.CoverageFactor * u) + 1e-12;
    }

    private static double Rounding(double half)
        => half is >= 0 and < double.PositiveInfinity ? half : throw new RefusedException("rounding", Spoken($"Half the last digit of a ratio is 0 or more, not {half:G6}."), "0.005");

    private static double HalfOfLast(string text)
    {
        var digits = text.Split(':')[0].Replace(',', '.').Trim();
        var isDecimal = double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value);
        if (!isDecimal || value == 1) return 0;

        var point = digits.IndexOf('.', StringComparison.Ordinal);
        return 0.5 * Math.Pow(10, point < 0 ? 0 : point + 1 - digits.Length);
    }
}
