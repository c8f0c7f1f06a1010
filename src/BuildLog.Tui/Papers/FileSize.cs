namespace BuildLog.Tui.Papers;

/// <summary>How large a file is, for people.</summary>
internal static class FileSize
{
    private const double Kilo = 1024;

    private const double Mega = Kilo * Kilo;

    public static string InWords(long bytes) => bytes switch
    {
        < (long)Kilo => Spoken($"{bytes} bytes"),
        < (long)Mega => FormattableString.Invariant($"{bytes / Kilo:0} kB"),
        _ => string.Create(Language.Spoken.Culture, $"{bytes / Mega:0.0} MB"),
    };
}
