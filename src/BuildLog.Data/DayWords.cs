using System.Globalization;

namespace BuildLog.Data;

internal static class DayWords
{
    /// <summary><c>3 May 2026</c>, whatever the machine's language: sentences are English.</summary>
    public static string InWords(this DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
}
