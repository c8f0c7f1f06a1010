using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Papers.Cards;

namespace BuildLog.Tui.YardCards;

/// <summary>Which results of a count mean yes and no, in words.</summary>
/// <remarks>
/// Each edge is the first or the last result that can be read there, a quarter of a turn or a millimetre, and still means it: what is read as yes is judged
/// to fit, what is read as no is judged to clash, and no other is.
/// </remarks>
internal static class CardRanges
{
    private static readonly Reading QuarterTurns = new(4, "", value => Rounded.Fixed(value, 2));
    private static readonly Reading Millimetres = new(1000, " m", value => Rounded.Fixed(value, 3));
    private static readonly Reading EighthsOfAnInch = new(8, " in", Eighths);

    /// <summary>Turns, to a quarter.</summary>
    public static CardRange OfTurns(string counted, Window? yes, Window possible) => Of(counted, yes, possible, QuarterTurns);

    /// <summary>Metres to a millimetre, inches to an eighth, as a tape is read.</summary>
    public static CardRange OfLength(string counted, Unit unit, Window? yes, Window possible)
        => Of(counted, yes is { } sure ? In(unit, sure) : null, In(unit, possible), unit == Units.Inch ? EighthsOfAnInch : Millimetres);

    private static Window In(Unit unit, Window window) => new(unit.FromBase(window.Low), unit.FromBase(window.High));

    private static CardRange Of(string counted, Window? yes, Window possible, Reading read)
    {
        var outer = new Window(read.Up(possible.Low), read.Down(possible.High));
        var inner = yes is { } sure ? new Window(read.Up(sure.Low), read.Down(sure.High)) : (Window?)null;
        return new(counted, inner is { IsEmpty: false } window ? Inside(window, read) : null, Outside(outer, read));
    }

    private static string Inside(Window window, Reading read) => (double.IsFinite(window.Low), double.IsFinite(window.High)) switch
    {
        (true, true) when window.Low == window.High => $"{read.Of(window.Low)}{read.Unit}",
        (true, true) => Spoken($"{read.Of(window.Low)} to {read.Of(window.High)}{read.Unit}"),
        (true, false) => Spoken($"{read.Of(window.Low)}{read.Unit} or more"),
        _ => Spoken($"{read.Of(window.High)}{read.Unit} or less"),
    };

    private static string Outside(Window window, Reading read) => (double.IsFinite(window.Low) && window.Low > 0, double.IsFinite(window.High)) switch
    {
        (true, true) => Spoken($"under {read.Of(window.Low)}, over {read.Of(window.High)}{read.Unit}"),
        (true, false) => Spoken($"under {read.Of(window.Low)}{read.Unit}"),
        _ => Spoken($"over {read.Of(window.High)}{read.Unit}"),
    };

    // 241 1/8, as the tape has it.
    private static string Eighths(double inches)
    {
        var (whole, eighths) = Math.DivRem((long)Math.Round(inches * 8), 8);
        var part = eighths switch { 0 => "", 4 => " 1/2", 2 or 6 => $" {eighths / 2}/4", _ => $" {eighths}/8" };
        return FormattableString.Invariant($"{whole}{part}");
    }

    /// <summary>How finely a count is read, and how that is written.</summary>
    private sealed record Reading(int Parts, string Unit, Func<double, string> Of)
    {
        public double Down(double value) => Math.Floor(value * Parts) / Parts;

        public double Up(double value) => Math.Ceiling(value * Parts) / Parts;
    }
}
