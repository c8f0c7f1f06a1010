using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Tui.Reference;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog man</c>: the manual page of all commands.</summary>
internal sealed class ManCommand : Command
{
    public ManCommand(Edge edge, Func<RootCommand> root) : base("man", Spoken("Print the manual page, to be kept as buildlog.1 or read with: buildlog man | man -l -"))
        => edge.Answers(this, _ =>
        {
            var page = ManPage.Write(CommandEntry.Of(root()), typeof(ManCommand).Assembly.GetName().Version!.ToString(3));
            return new(new JsonObject { ["page"] = string.Join('\n', page) + "\n" }, page);
        });
}
