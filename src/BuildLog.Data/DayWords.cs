namespace BuildLog.Data;

internal static class DayWords
{
    /// <summary><c>3 May 2026</c>, as the language spoken writes it, whatever the machine thinks.</summary>
    public static string InWords(this DateOnly day) => day.ToString("d MMMM yyyy", Language.Spoken.Culture);
}
