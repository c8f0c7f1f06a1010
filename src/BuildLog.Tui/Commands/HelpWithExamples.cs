using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using BuildLog.Tui.Reference;

namespace BuildLog.Tui.Commands;

/// <summary><c>--help</c> as the library writes it, and below it how the command is typed in full.</summary>
internal sealed class HelpWithExamples(HelpAction usual) : SynchronousCommandLineAction
{
    public static void AddTo(RootCommand root)
    {
        var help = root.Options.OfType<HelpOption>().Single();
        help.Action = new HelpWithExamples((HelpAction)help.Action!);
        help.Description = Spoken("Show help and usage information");
        root.Options.OfType<VersionOption>().Single().Description = Spoken("Show version information");
    }

    /// <summary>Who asks for help need not have the rest of the line right.</summary>
    public override bool ClearsParseErrors => true;

    /// <summary>The words that a command was called by, without the program's own: "paper order".</summary>
    public static string NameOf(CommandResult? result)
        => result is null or { Command: RootCommand } ? "" : $"{NameOf(result.Parent as CommandResult)} {result.Command.Name}".Trim();

    public override int Invoke(ParseResult parseResult)
    {
        var (how, output) = (parseResult.InvocationConfiguration, parseResult.InvocationConfiguration.Output);
        using var written = new StringWriter { NewLine = "\n" };
        how.Output = written;
        var exitCode = usual.Invoke(parseResult);
        how.Output = output;
        output.Write(string.Join(output.NewLine, written.ToString().Split('\n').Select(LibrarySentences.OfHelp)));

        var examples = CommandExamples.Of(NameOf(parseResult.CommandResult));
        if (examples.Count == 0) return exitCode;

        output.WriteLine(Spoken("Examples:"));
        foreach (var example in examples) output.WriteLine($"  {example}");
        output.WriteLine();
        return exitCode;
    }
}
