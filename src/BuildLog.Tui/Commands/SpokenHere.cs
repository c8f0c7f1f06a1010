namespace BuildLog.Tui.Commands;

/// <summary>Which language a command speaks: the one it is asked for, else the machine's, else English. What programs read is English always.</summary>
internal static class SpokenHere
{
    public const string OptionName = "--language";

    // In the order the operating system's own programs ask.
    private static readonly string[] Settings = ["LC_ALL", "LC_MESSAGES", "LANG"];

    /// <summary>Chosen before the commands are made, as their descriptions are texts too; a word that names no language is refused later, like any wrong option.</summary>
    /// <param name="arguments">The command line.</param>
    /// <param name="setting">Reads a setting of the machine.</param>
    public static Language Of(IReadOnlyList<string> arguments, Func<string, string?> setting)
    {
        // Scripts and manuals are written once for everybody; JSON is for programs.
        if (arguments.Contains("--json") || arguments is ["man" or "completion", ..]) return Language.English;
        return Asked(arguments) is { } asked ? Language.Read(asked) ?? Language.English : OfTheMachine(setting);
    }

    private static string? Asked(IReadOnlyList<string> arguments)
    {
        for (var i = 0; i < arguments.Count; i++)
        {
            if (arguments[i] == OptionName && i + 1 < arguments.Count) return arguments[i + 1];
            if (arguments[i].StartsWith(OptionName + "=", StringComparison.Ordinal)) return arguments[i][(OptionName.Length + 1)..];
        }

        return null;
    }

    // The first that is set decides, though it may name a language that is not spoken here.
    private static Language OfTheMachine(Func<string, string?> setting)
        => Settings.Select(setting).FirstOrDefault(value => value is { Length: > 0 }) is { } first ? Language.Read(first) ?? Language.English : Language.English;
}
