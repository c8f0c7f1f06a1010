using System.Globalization;

namespace BuildLog.Data.Days;

/// <summary>A day of the calendar with its month named in any language that is spoken here: a text that was typed in one is read again in the other.</summary>
public static class CalendarDay
{
    /// <param name="text">What was typed, <c>3 May 2026</c> or <c>3 mei 2026</c>.</param>
    /// <param name="forms">How it may be written.</param>
    /// <param name="day">The day, where there is one.</param>
    public static bool TryRead(string text, string[] forms, out DateOnly day)
    {
        foreach (var language in Language.All)
        {
            if (DateOnly.TryParseExact(text, forms, language.Culture, DateTimeStyles.AllowInnerWhite, out day)) return true;
        }

        day = default;
        return false;
    }
}
