using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Measurements;

/// <summary>The propshaft's last part of a turn, as people read it off: <c>1/4</c>, <c>0.3</c>, <c>120°</c>.</summary>
public static class TallyFraction
{
    private const string Right = "1/4, 0.3 or 120°";

    /// <summary>Turns, from none to less than one; nothing typed is none.</summary>
    public static Parsed<double> Read(string text)
    {
        var typed = text.Trim();
        if (typed.Length == 0) return 0;
        var number = WithoutDegrees(typed);
        var isDegrees = number.Length < typed.Length;
        return QuantityText.ReadNumber(isDegrees ? number.Trim() : typed).Showing(Right).In(text).Then<double>(read => (isDegrees ? read / 360 : read) switch
        {
            >= 0 and < 1 and var turns => turns,
            _ => new Refusal("fraction", Spoken($"{Shown.Quoted(typed)} is not part of a turn: none to less than one; degrees with their sign."), Right),
        });
    }

    /// <summary>Whether it is typed in degrees.</summary>
    public static bool IsInDegrees(string text) => WithoutDegrees(text.Trim()).Length < text.Trim().Length;

    private static string WithoutDegrees(string typed)
        => typed.EndsWith("deg", StringComparison.OrdinalIgnoreCase) ? typed[..^3] : typed.TrimEnd('°');
}
