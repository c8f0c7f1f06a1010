using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Papers.Cards;

namespace BuildLog.Tui.YardCards;

/// <summary>Which results of a count mean yes and no, in words.</summary>
/// <remarks>Yes is rounded inwards and no outwards, to what can be read there, so that neither says too much.</remarks>
internal static class CardRanges
{
    private static readonly Reading QuarterTurns = new(4, 2, "");
    private static readonly Reading Centimetres = new(100, 2, " m");
    private static readonly Reading HalfInches = new(2, 1, " in");

    /// <summary>Turns, to a quarter.</summary>
    public static CardRange OfTurns(string counted, Window? yes, Window possible) => Of(counted, yes, possible, QuarterTurns);

    /// <summary>Metres to a centimetre, inches to a half.</summary>
    public static CardRange OfLength(string counted, Unit unit, Window? yes, Window possible)
        => Of(counted, yes is { } sure ? In(unit, sure) : null, In(unit, possible), unit == Units.Inch ? HalfInches : Centimetres);

    private static Window In(Unit unit, Window window) => new(unit.FromBase(window.Low), unit.FromBase(window.High));

    private static CardRange Of(string counted, Window? yes, Window possible, Reading read)
    {
        var outer = new Window(read.Down(possible.Low), read.Up(possible.High));
        var inner = yes is { } sure ? new Window(read.Up(sure.Low), read.Down(sure.High)) : (Window?)null;
        return new(counted, inner is { IsEmpty: false } window ? Inside(window, read) : null, Outside(outer, read));
    }

    private static string Inside(Window window, Reading read) => (double.IsFinite(window.Low), double.IsFinite(window.High)) switch
    {
        (true, true) when window.Low == window.High => $"{read.Of(window.Low)}{read.Unit}",
        (true, true) => $"{read.Of(window.Low)} to {read.Of(window.High)}{read.Unit}",
        (true, false) => $"{read.Of(window.Low)}{read.Unit} or more",
        _ => $"{read.Of(window.High)}{read.Unit} or less",
    };

    private static string Outside(Window window, Reading read) => (double.IsFinite(window.Low) && window.Low > 0, double.IsFinite(window.High)) switch
    {
        (true, true) => $"under {read.Of(window.Low)}, over {read.Of(window.High)}{read.Unit}",
        (true, false) => $"under {read.Of(window.Low)}{read.Unit}",
        _ => $"over {read.Of(window.High)}{read.Unit}",
    };

    /// <summary>How finely a count is read, and how that is written.</summary>
    private sealed record Reading(int Parts, int Places, string Unit)
    {
        public double Down(double value) => Math.Floor(value * Parts) / Parts;

        public double Up(double value) => Math.Ceiling(value * Parts) / Parts;

        public string Of(double value) => Rounded.Fixed(value, Places);
    }
}
