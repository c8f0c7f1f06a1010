using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Reference;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog completion SHELL</c>: the script that lets a shell complete commands and options.</summary>
internal sealed class CompletionCommand : Command
{
    private const string Shells = "bash|zsh|fish|powershell";

    private readonly Argument<string> shell = new("SHELL") { Description = Spoken("The shell to write it for."), HelpName = Shells };

    public CompletionCommand(Edge edge, Func<RootCommand> root) : base("completion", Spoken("Print the script that completes commands and options in a shell."))
    {
        Arguments.Add(shell);
        edge.Answers(this, parse =>
        {
            var script = Script(parse.GetRequiredValue(shell), CommandEntry.Of(root()));
            return new(new JsonObject { ["script"] = string.Join('\n', script) + "\n" }, script);
        });
    }

    private static IReadOnlyList<string> Script(string name, CommandEntry program) => name switch
    {
        "bash" => BashCompletion.Write(program),
        "zsh" => ZshCompletion.Write(program),
        "fish" => FishCompletion.Write(program),
        "powershell" => PowerShellCompletion.Write(program),
        _ => throw new WrongInputException(new Refusal("shell", Spoken($"'{name}' is no shell that is known here: {Shells.Replace("|", ", ", StringComparison.Ordinal)}."), "buildlog completion bash"), "SHELL"),
    };
}
