using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Data;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog undo</c> and <c>buildlog redo</c>: one step back or forward, also long after the change was made.</summary>
internal sealed class UndoCommand : Command
{
    private UndoCommand(Edge edge, string name, string description, string key, Func<Shop, string> act, Func<string, string> says) : base(name, description)
        => edge.Answers(this, parse =>
        {
            using var shop = edge.OpenShop(parse);
            var what = act(shop);
            return new(new JsonObject { [key] = what }, [says(what)]);
        });

    public static UndoCommand Undo(Edge edge) => new(edge, "undo", Spoken("Take back the latest change."), "undid", shop => shop.Undo(), what => Spoken($"Undid: {what}."));

    public static UndoCommand Redo(Edge edge) => new(edge, "redo", Spoken("Bring back what was undone last."), "redid", shop => shop.Redo(), what => Spoken($"Redid: {what}."));
}
