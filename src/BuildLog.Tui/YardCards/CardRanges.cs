using BuildLog.Gearing.Goals;
using BuildLog.Sheet.Papers.Cards;

namespace BuildLog.Tui.YardCards;

/// <summary>Which results of a count mean yes and no, in words.</summary>
/// <remarks>Yes is rounded inwards and no outwards, to what can be read there, so that neither says too much.</remarks>
internal static class CardRanges
{
    private const int PartsOfATurn = 4;
    private const int PartsOfAMetre = 100;

    /// <summary>Turns, to a quarter.</summary>
    public static CardRange OfTurns(string counted, Window? yes, Window possible) => Of(counted, yes, possible, PartsOfATurn, "");

    /// <summary>Metres, to a centimetre.</summary>
    public static CardRange OfMetres(string counted, Window? yes, Window possible) => Of(counted, yes, possible, PartsOfAMetre, " m");

    private static CardRange Of(string counted, Window? yes, Window possible, int parts, string unit)
    {
        var outer = new Window(Math.Floor(possible.Low * parts) / parts, Math.Ceiling(possible.High * parts) / parts);
        var inner = yes is { } sure ? new Window(Math.Ceiling(sure.Low * parts) / parts, Math.Floor(sure.High * parts) / parts) : (Window?)null;
        return new(counted, inner is { IsEmpty: false } window ? Inside(window, unit) : null, Outside(outer, unit));
    }

    private static string Inside(Window window, string unit) => (double.IsFinite(window.Low), double.IsFinite(window.High)) switch
    {
        (true, true) when window.Low == window.High => FormattableString.Invariant($"{window.Low:0.00}{unit}"),
        (true, true) => FormattableString.Invariant($"{window.Low:0.00} to {window.High:0.00}{unit}"),
        (true, false) => FormattableString.Invariant($"{window.Low:0.00}{unit} or more"),
        _ => FormattableString.Invariant($"{window.High:0.00}{unit} or less"),
    };

    private static string Outside(Window window, string unit) => (double.IsFinite(window.Low) && window.Low > 0, double.IsFinite(window.High)) switch
    {
        (true, true) => FormattableString.Invariant($"under {window.Low:0.00}, over {window.High:0.00}{unit}"),
        (true, false) => FormattableString.Invariant($"under {window.Low:0.00}{unit}"),
        _ => FormattableString.Invariant($"over {window.High:0.00}{unit}"),
    };
}
