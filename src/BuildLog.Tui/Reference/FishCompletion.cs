namespace BuildLog.Tui.Reference;

/// <summary>Completion for fish: <c>buildlog completion fish | source</c>.</summary>
internal static class FishCompletion
{
    public static IReadOnlyList<string> Write(CommandEntry program) =>
    [
        "# Completion of buildlog for fish. Written by: buildlog completion fish",
        .. program.Options.Select(option => Option("", option)),
        .. program.All.SelectMany(Below),
    ];

    private static IEnumerable<string> Below(CommandEntry command) =>
    [
        .. command.Commands.Select(below => $"complete -c buildlog -n '{Where(command)}' -f -a {below.LastWord} -d {Quoted(below.Description)}"),
        .. command.Values.Where(value => Choices.Of(value.Takes).Count > 0).Select(value => $"complete -c buildlog -n '{Where(command)}' -f -a '{string.Join(' ', Choices.Of(value.Takes))}'"),
        .. command.Name.Length == 0 ? [] : command.Options.Select(option => Option($" -n '{Where(command)}'", option)),
    ];

    private static string Option(string where, OptionEntry option)
    {
        var takes = option.Takes.Length == 0 ? "" : Choices.IsFile(option.Takes) ? " -r -F" : Choices.Of(option.Takes) is { Count: > 0 } words ? $" -x -a '{string.Join(' ', words)}'" : " -x";
        return $"complete -c buildlog{where} -l {option.Name.TrimStart('-')}{takes} -d {Quoted(option.Description)}";
    }

    // Under a command all its words were typed; where it has commands below, none of those yet.
    private static string Where(CommandEntry command)
    {
        if (command.Name.Length == 0) return "__fish_use_subcommand";
        var seen = string.Join("; and ", command.Name.Split(' ').Select(word => $"__fish_seen_subcommand_from {word}"));
        return command.Commands.Count == 0 ? seen : $"{seen}; and not __fish_seen_subcommand_from {string.Join(' ', command.Commands.Select(below => below.LastWord))}";
    }

    private static string Quoted(string text) => $"'{text.Replace(@"\", @"\\", StringComparison.Ordinal).Replace("'", @"\'", StringComparison.Ordinal)}'";
}
