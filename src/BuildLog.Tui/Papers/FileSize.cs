namespace BuildLog.Tui.Papers;

/// <summary>How large a file is, for people.</summary>
internal static class FileSize
{
    public const double Kilo = 1024;

    private const double Mega = Kilo * Kilo;

    public static string InWords(long bytes) => bytes < Mega
        ? FormattableString.Invariant($"{bytes / Kilo:0} kB")
        : FormattableString.Invariant($"{bytes / Mega:0.0} MB");
}
