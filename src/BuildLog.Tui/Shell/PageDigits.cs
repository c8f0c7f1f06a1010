namespace BuildLog.Tui.Shell;

/// <summary>The digit keys of pages: 1 to 9, then 0 for the tenth. Further pages have none.</summary>
internal static class PageDigits
{
    private const string Digits = "1234567890";

    /// <summary>The digit of a page by its index; null for a page beyond the tenth.</summary>
    public static char? Of(int page) => page < Digits.Length ? Digits[page] : null;

    /// <summary>What the line of keys calls them, as they lie on the keyboard.</summary>
    public static string Range(int pages) => pages < Digits.Length ? $"1-{pages}" : pages == Digits.Length ? "1-0" : "1-0 ←→";
}
