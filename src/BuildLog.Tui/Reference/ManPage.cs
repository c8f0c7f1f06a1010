using System.Text;

namespace BuildLog.Tui.Reference;

/// <summary>The manual page in the man macros of roff: <c>buildlog man &gt; buildlog.1</c>.</summary>
internal static class ManPage
{
    public static IReadOnlyList<string> Write(CommandEntry program, string version)
    {
        List<string> page =
        [
            $".TH BUILDLOG 1 \"\" \"BuildLog {version}\" \"User Commands\"",
            ".SH NAME",
            "buildlog \\- bench record and gearing engine of a one-person restomod shop",
            ".SH SYNOPSIS",
            ".B buildlog",
            "[\\fICOMMAND\\fR] [\\fIoptions\\fR]",
            ".SH DESCRIPTION",
            Text(program.Description),
            ".SH OPTIONS",
            "These go with every command.",
        ];
        foreach (var option in program.Options) page.AddRange(Entry(Bold(option.Name, option.Takes), option.Description));
        page.Add(".SH COMMANDS");
        foreach (var command in program.All.Skip(1)) page.AddRange(Section(command));
        page.Add(".SH EXIT STATUS");
        page.Add(Text(ExitCodesInWords.Sentence));
        page.Add(".SH FILES");
        page.AddRange(Entry(@"\fI~/.local/share/buildlog/shop.db\fR", "The record, unless XDG_DATA_HOME or --database says otherwise; shop.files beside it holds the attachments, backups the daily copies."));
        page.AddRange(Entry(@"\fI~/.local/state/buildlog/errors.log\fR", "What went wrong, in full, unless XDG_STATE_HOME says otherwise."));
        return page;
    }

    private static IEnumerable<string> Section(CommandEntry command)
    {
        yield return $".SS {Text(command.Name)}";
        yield return Text(command.Description);
        yield return ".PP";
        yield return $".B {Text(command.Usage)}";
        foreach (var value in command.Values)
        {
            foreach (var line in Entry($@"\fI{Text(value.Takes.Length > 0 ? value.Takes : value.Name)}\fR", value.Description)) yield return line;
        }

        foreach (var option in command.Options)
        {
            foreach (var line in Entry(Bold(option.Name, option.Takes), option.Description)) yield return line;
        }

        if (CommandExamples.Of(command.Name) is not { Count: > 0 } examples) yield break;
        yield return ".PP";
        yield return ".nf";
        foreach (var example in examples) yield return Text(example);
        yield return ".fi";
    }

    private static IEnumerable<string> Entry(string tag, string description) => [".TP", tag, Text(description)];

    private static string Bold(string name, string takes) => takes.Length == 0 ? $@"\fB{Text(name)}\fR" : $@"\fB{Text(name)}\fR \fI{Text(takes)}\fR";

    // A hyphen-minus that is typed must stay one, and no line may begin with a control character of roff.
    private static string Text(string plain)
    {
        var text = new StringBuilder(plain).Replace(@"\", @"\e").Replace("-", @"\-").Replace("±", @"\[+-]").ToString();
        return text.StartsWith('.') || text.StartsWith('\'') ? @"\&" + text : text;
    }
}
