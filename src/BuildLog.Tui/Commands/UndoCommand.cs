using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Data;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog undo</c> and <c>buildlog redo</c>: one step back or forward, also long after the change was made.</summary>
internal sealed class UndoCommand : Command
{
    private UndoCommand(Edge edge, string name, string description, string did, Func<Shop, string> act) : base(name, description)
        => edge.Answers(this, parse =>
        {
            using var shop = edge.OpenShop(parse);
            var what = act(shop);
            return new(new JsonObject { [did] = what }, [$"{char.ToUpperInvariant(did[0])}{did[1..]}: {what}."]);
        });

    public static UndoCommand Undo(Edge edge) => new(edge, "undo", Spoken("Take back the latest change."), Spoken("undid"), shop => shop.Undo());

    public static UndoCommand Redo(Edge edge) => new(edge, "redo", Spoken("Bring back what was undone last."), Spoken("redid"), shop => shop.Redo());
}
