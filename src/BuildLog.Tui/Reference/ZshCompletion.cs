namespace BuildLog.Tui.Reference;

/// <summary>Completion for zsh: write it to a file <c>_buildlog</c> in a folder of <c>$fpath</c>.</summary>
internal static class ZshCompletion
{
    public static IReadOnlyList<string> Write(CommandEntry program) =>
    [
        "#compdef buildlog",
        "# Completion of buildlog for zsh. Written by: buildlog completion zsh",
        "_buildlog() {",
        .. Level(program, program),
        "}",
        .. program.All.Skip(1).SelectMany(command => (IEnumerable<string>)[$"{Function(command)}() {{", .. Level(program, command), "}"]),
        "if [ \"$funcstack[1]\" = \"_buildlog\" ]; then _buildlog \"$@\"; else compdef _buildlog buildlog; fi",
    ];

    private static IEnumerable<string> Level(CommandEntry program, CommandEntry command)
    {
        var options = command == program ? command.Options : [.. command.Options, .. program.Options];
        if (command.Commands.Count == 0) return Arguments([.. options.Select(Option), .. command.Values.Select(Value)]);

        return
        [
            "    local line state",
            .. Arguments([.. options.Select(Option), "'1: :->command'", "'*::argument:->argument'"], "-C "),
            "    case $state in",
            $"        command) local -a commands=({string.Join(' ', command.Commands.Select(below => Quoted($"{below.LastWord}:{Escaped(below.Description)}")))}); _describe command commands ;;",
            "        argument) case $line[1] in",
            .. command.Commands.Select(below => $"            {below.LastWord}) {Function(below)} ;;"),
            "        esac ;;",
            "    esac",
        ];
    }

    private static IEnumerable<string> Arguments(IReadOnlyList<string> specifications, string how = "")
        => specifications.Append("'(-h --help)'{-h,--help}'[Show help]'").Select((one, at) => (at == 0 ? $"    _arguments {how}" : "        ") + one + (at < specifications.Count ? " \\" : ""));

    private static string Option(OptionEntry option)
        => Quoted($"{(option.Repeats ? "*" : "")}{option.Name}[{Escaped(option.Description)}]{(option.Takes.Length == 0 ? "" : $":{Escaped(option.Takes)}:{Action(option.Takes)}")}");

    private static string Value(ValueEntry value) => Quoted($":{Escaped(value.Name)}:{Action(value.Takes.Length > 0 ? value.Takes : value.Name)}");

    private static string Action(string takes)
        => Choices.Of(takes) is { Count: > 0 } words ? $"({string.Join(' ', words)})" : Choices.IsFile(takes) ? "_files" : " ";

    private static string Quoted(string text) => $"'{text.Replace("'", @"'\''", StringComparison.Ordinal)}'";

    private static string Escaped(string text)
        => text.Replace(@"\", @"\\", StringComparison.Ordinal).Replace(":", @"\:", StringComparison.Ordinal).Replace("[", @"\[", StringComparison.Ordinal).Replace("]", @"\]", StringComparison.Ordinal);

    private static string Function(CommandEntry command) => "_buildlog_" + command.Name.Replace(' ', '_').Replace('-', '_');
}
