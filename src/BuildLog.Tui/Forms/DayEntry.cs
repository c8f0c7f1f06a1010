using BuildLog.Data.Days;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Forms;

/// <summary>Entries that ask for a day, with what was understood below them. What has been is asked for as far as anybody knows it; what is due, to the day.</summary>
internal static class DayEntry
{
    /// <summary>The day something was done.</summary>
    /// <param name="id">Its value.</param>
    /// <param name="caption">What happened that day.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="known">What stands there at first; null for today.</param>
    public static TextEntry Past(string id, string caption, DateOnly today, LooseDay? known = null)
        => Past(id, caption, today, known is { } day ? day.InWords : Spoken("today"), Spoken("today, yesterday, 3 May or, as far as known, spring 2024"));

    /// <summary>The same with a hint of its own; where it begins empty it may stay so.</summary>
    public static TextEntry Past(string id, string caption, DateOnly today, string initial, string hint) => new(id, caption)
    {
        Initial = initial,
        Hint = hint,
        Check = values => values.IsEmpty(id) && initial.Length == 0 ? null : DayText.ReadLoosePast(values[id], today).Refusal?.Sentence,
        Echo = values => DayText.Echo(DayText.ReadPast(values[id], today), values[id]) ?? Between(DayText.ReadLoosePast(values[id], today)),
    };

    /// <summary>What was typed into an entry of a day that has been.</summary>
    /// <exception cref="RefusedException">It is no such day.</exception>
    public static LooseDay In(FormValues values, string id, DateOnly today) => DayText.ReadLoosePast(values[id], today).OrRefuse();

    /// <summary>The day by which something has to be done.</summary>
    public static TextEntry Due(string id, string caption, DateOnly today, DateOnly? known = null) => new(id, caption)
    {
        Initial = known is { } day ? DayText.InWords(day) : "",
        Hint = Spoken("such as 3 May or 3 May 2026"),
        Check = Checks.Needed(id, text => DayText.ReadDue(text, today)),
        Echo = values => DayText.Echo(DayText.ReadDue(values[id], today), values[id]),
    };

    private static string? Between(Parsed<LooseDay> read)
        => read.Understood(out var day) && !day.IsExact && day is { Earliest: { } from, Latest: { } to } ? Spoken($"= between {DayText.InWords(from)} and {DayText.InWords(to)}") : null;
}
