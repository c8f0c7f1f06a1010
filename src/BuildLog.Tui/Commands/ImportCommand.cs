using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Data.Moving;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog import FILE.zip</c>: merges what was exported, all of it or nothing.</summary>
internal sealed class ImportCommand : Command
{
    private readonly Argument<string> file = new("FILE") { Description = Spoken("A zip made with export.") };
    private readonly Option<bool> dryRun = new("--dry-run") { Description = Spoken("Only say what would come of it.") };

    public ImportCommand(Edge edge) : base("import", Spoken("Merge an exported zip into the record: all of it or nothing."))
    {
        Arguments.Add(file);
        Options.Add(dryRun);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var path = Reading.Of(file.Name, parse.GetValue(file)!, CopyFile.Read);
        using var shop = edge.OpenShop(parse);
        var came = Reading.Blaming(file.Name, () => shop.Import(path, parse.GetValue(dryRun)));
        var json = new JsonObject
        {
            ["dryRun"] = came.IsDry,
            ["added"] = MovedWords.InJson(came.Added),
            ["alike"] = came.Alike,
            ["differing"] = Json.Array(came.Differing, entry => entry),
            ["attachmentsLacking"] = Json.Array(came.Lacking, name => name),
        };
        return new(json, [.. ToText(came)]);
    }

    private static IEnumerable<string> ToText(ImportReport came)
    {
        var would = came.IsDry ? Spoken("Would be added") : Spoken("Added");
        yield return came.Added.Count == 0 ? Spoken($"Nothing {(came.IsDry ? Spoken("would be") : Spoken("was"))} added: everything is here already.") : $"{would}: {MovedWords.InWords(came.Added)}.";
        if (came.Alike > 0) yield return Spoken($"Here already, the same: {came.Alike}.");
        foreach (var entry in came.Differing) yield return Spoken($"Differs and stays as it is here: {entry}");
        foreach (var line in MovedWords.Lacking(came.Lacking)) yield return line;
    }
}
