using BuildLog.Gearing.Goals;

namespace BuildLog.Tui.YardCards;

/// <summary>What a count may come to, in words, rounded so that neither yes nor no says too much.</summary>
internal static class CardRanges
{
    private const int PartsOfATurn = 4;
    private const int PartsOfAMetre = 100;

    /// <summary>Turns that are a sure yes, in quarters; null where there are none.</summary>
    public static string? YesTurns(Window? turns) => Yes(turns, PartsOfATurn, "");

    /// <summary>Turns that are a sure no, in quarters.</summary>
    public static string NoTurns(Window possible) => No(possible, PartsOfATurn, "");

    /// <summary>The same of metres, in centimetres.</summary>
    public static string? YesMetres(Window? metres) => Yes(metres, PartsOfAMetre, " m");

    public static string NoMetres(Window possible) => No(possible, PartsOfAMetre, " m");

    // Yes is rounded inwards, no outwards.
    private static string? Yes(Window? sure, int parts, string unit)
    {
        if (sure is not { } window) return null;

        var inner = new Window(Math.Ceiling(window.Low * parts) / parts, Math.Floor(window.High * parts) / parts);
        return inner.IsEmpty ? null : (double.IsFinite(inner.Low), double.IsFinite(inner.High)) switch
        {
            (true, true) => FormattableString.Invariant($"{inner.Low:0.00} to {inner.High:0.00}{unit}"),
            (true, false) => FormattableString.Invariant($"{inner.Low:0.00}{unit} or more"),
            _ => FormattableString.Invariant($"{inner.High:0.00}{unit} or less"),
        };
    }

    private static string No(Window possible, int parts, string unit)
    {
        var (low, high) = (Math.Floor(possible.Low * parts) / parts, Math.Ceiling(possible.High * parts) / parts);
        return (double.IsFinite(low) && low > 0, double.IsFinite(high)) switch
        {
            (true, true) => FormattableString.Invariant($"under {low:0.00}, over {high:0.00}{unit}"),
            (true, false) => FormattableString.Invariant($"under {low:0.00}{unit}"),
            (false, true) => FormattableString.Invariant($"over {high:0.00}{unit}"),
            _ => "nothing",
        };
    }
}
