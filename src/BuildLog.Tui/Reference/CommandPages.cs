using System.Text;

namespace BuildLog.Tui.Reference;

/// <summary>The command-line reference, docs/commands.md. <c>BUILDLOG_WRITE_DOCS=1</c> in a test run writes it anew.</summary>
internal static class CommandPages
{
    /// <param name="program">All commands.</param>
    /// <param name="answer">The fields of a command's answer with --json; empty for none.</param>
    public static string Write(CommandEntry program, Func<CommandEntry, string> answer)
    {
        var page = new StringBuilder()
            .Append(Spoken("# The command line\n\nWritten from the commands themselves; `buildlog COMMAND --help` says the same. "))
            .Append(Spoken("Quantities are typed as people write them: `27 in`, `2040mm`, `2,04 m`, `110 km/h`, `20 1/2`, `4.08±0.03`.\n\n"))
            .Append(ExitCodesInWords.Sentence).Append('\n');
        page.Append(Spoken("\n## With every command\n"));
        AppendOptions(page, program.Options);
        foreach (var command in program.All.Skip(1)) Append(page, command, answer(command));
        return page.ToString();
    }

    private static void Append(StringBuilder page, CommandEntry command, string answer)
    {
        page.Append('\n').Append("## ").Append(command.Name).Append("\n\n").Append(command.Description).Append("\n\n    ").Append(command.Usage).Append('\n');
        if (command.Values.Count > 0)
        {
            page.Append(Spoken("\n| given by place | |\n|---|---|\n"));
            foreach (var value in command.Values) AppendRow(page, value.Takes.Length > 0 ? value.Takes : value.Name, value.Description);
        }

        AppendOptions(page, command.Options);
        if (CommandExamples.Of(command.Name) is { Count: > 0 } examples)
        {
            page.Append(Spoken("\nFor example:\n\n"));
            foreach (var example in examples) page.Append("    ").Append(example).Append('\n');
        }

        if (answer.Length > 0) page.Append(Spoken("\nWith `--json`: `")).Append(answer).Append("`\n");
    }

    private static void AppendOptions(StringBuilder page, IReadOnlyList<OptionEntry> options)
    {
        if (options.Count == 0) return;
        page.Append(Spoken("\n| option | |\n|---|---|\n"));
        foreach (var option in options) AppendRow(page, $"{option.Name} {option.Takes}".TrimEnd(), option.Description);
    }

    private static void AppendRow(StringBuilder page, string left, string right)
        => page.Append("| `").Append(left.Replace("|", "\\|", StringComparison.Ordinal)).Append("` | ").Append(right.Replace("|", "\\|", StringComparison.Ordinal)).Append(" |\n");
}
