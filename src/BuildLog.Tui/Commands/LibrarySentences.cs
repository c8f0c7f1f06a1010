using System.Text.RegularExpressions;

namespace BuildLog.Tui.Commands;

/// <summary>What the command-line library says by itself, in the language spoken.</summary>
/// <remarks>It knows no Dutch and takes no words from outside, so its sentences are known again by how they read, and said as if they were ours. In English they stay as they are.</remarks>
internal static partial class LibrarySentences
{
    /// <summary>What is wrong with a line; one the list below does not know stays in English.</summary>
    public static string Of(string error)
    {
        if (Unknown().Match(error) is { Success: true } unknown) return Spoken($"Unrecognized command or argument '{unknown.Groups[1].Value}'.");
        if (OptionWithoutArgument().Match(error) is { Success: true } bare) return Spoken($"Required argument missing for option: '{bare.Groups[1].Value}'.");
        if (MissingArgument().Match(error) is { Success: true } missing) return Spoken($"Required argument '{missing.Groups[1].Value}' missing for command: '{missing.Groups[2].Value}'.");
        if (TwiceGiven().Match(error) is { Success: true } twice) return Spoken($"Option '{twice.Groups[1].Value}' expects a single argument but {twice.Groups[2].Value} were provided.");
        if (MissingOption().Match(error) is { Success: true } option) return Spoken($"Option '{option.Groups[1].Value}' is required.");
        if (NoResponseFile().Match(error) is { Success: true } file) return Spoken($"Response file not found '{file.Groups[1].Value}'.");
        return error == "Required command was not provided." ? Spoken("Required command was not provided.") : error;
    }

    /// <summary>A line of its help; the headings are its own, the rest is said already.</summary>
    public static string OfHelp(string line) => line switch
    {
        "Description:" => Spoken("Description:"),
        "Usage:" => Spoken("Usage:"),
        "Arguments:" => Spoken("Arguments:"),
        "Options:" => Spoken("Options:"),
        "Commands:" => Spoken("Commands:"),
        _ => line,
    };

    [GeneratedRegex(@"^Unrecognized command or argument '(.*)'\.$", RegexOptions.Singleline)]
    private static partial Regex Unknown();

    [GeneratedRegex(@"^Required argument missing for option: '(.*)'\.$", RegexOptions.Singleline)]
    private static partial Regex OptionWithoutArgument();

    [GeneratedRegex(@"^Required argument '(.*)' missing for command: '(.*)'\.$", RegexOptions.Singleline)]
    private static partial Regex MissingArgument();

    [GeneratedRegex(@"^Option '(.*)' expects a single argument but (\d+) were provided\.$", RegexOptions.Singleline)]
    private static partial Regex TwiceGiven();

    [GeneratedRegex(@"^Option '(.*)' is required\.$", RegexOptions.Singleline)]
    private static partial Regex MissingOption();

    [GeneratedRegex(@"^Response file not found '(.*)'\.$", RegexOptions.Singleline)]
    private static partial Regex NoResponseFile();
}
