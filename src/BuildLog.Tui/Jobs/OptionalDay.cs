using BuildLog.Data.Days;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Jobs;

/// <summary>A day that may be left open.</summary>
internal static class OptionalDay
{
    /// <summary>One that is due; without its year, the next to come.</summary>
    public static TextEntry Due(string id, string caption, DateOnly? day, DateOnly today) => Entry(id, caption, day, text => DayText.ReadDue(text, today));

    /// <summary>One that has been.</summary>
    public static TextEntry Past(string id, string caption, LooseDay? day, DateOnly today)
        => DayEntry.Past(id, caption, today, "", Spoken("such as 3 May 2026 or, as far as known, spring 2024; empty for no day")) with { Initial = day?.InWords ?? "" };

    public static DateOnly? DueOf(FormValues values, string id, DateOnly today) => values.IsEmpty(id) ? null : DayText.ReadDue(values[id], today).OrRefuse();

    public static LooseDay? PastOf(FormValues values, string id, DateOnly today) => values.IsEmpty(id) ? null : DayEntry.In(values, id, today);

    private static TextEntry Entry(string id, string caption, DateOnly? day, Func<string, Parsed<DateOnly>> read) => new(id, caption)
    {
        Initial = day is { } known ? DayText.InWords(known) : "",
        Hint = Spoken("such as 3 May or 3 May 2026; empty for no day"),
        Check = Forms.Checks.IfTyped(id, read),
        Echo = values => DayText.Echo(read(values[id]), values[id]),
    };
}
