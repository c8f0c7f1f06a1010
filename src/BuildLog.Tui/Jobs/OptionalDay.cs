using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Jobs;

/// <summary>A day that may be left open.</summary>
internal static class OptionalDay
{
    public static TextEntry Entry(string id, string caption, DateOnly? day, DateOnly today) => new(id, caption)
    {
        Initial = day is { } known ? DayText.InWords(known) : "",
        Hint = "such as 3 May 2026; empty for no day",
        Check = Forms.Checks.IfTyped(id, text => DayText.Read(text, today)),
    };

    public static DateOnly? Of(FormValues values, string id, DateOnly today) => values.IsEmpty(id) ? null : DayText.Read(values[id], today).OrRefuse();
}
