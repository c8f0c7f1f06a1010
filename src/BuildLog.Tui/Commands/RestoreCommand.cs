using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Data.Files;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog restore FILE</c>: puts a copy in the record's place and keeps what was there.</summary>
internal sealed class RestoreCommand : Command
{
    private readonly Argument<string> file = new("FILE") { Description = Spoken("A copy made with backup, or one from the folder backups beside the record.") };

    public RestoreCommand(Edge edge) : base("restore", Spoken("Put a copy in the record's place; what was there is kept."))
    {
        Arguments.Add(file);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        if (parse.GetValue(edge.Common.Demo))
            throw Reading.Wrong(edge.Common.Demo.Name, new Refusal("demo", Spoken("The demo shop is thrown away at the end, so nothing can be restored to it. Name a file with --database."), ""));

        var path = Reading.Of(file.Name, parse.GetValue(file)!, CopyFile.Read);
        var restored = Restore.From(path, edge.RecordPath(parse));
        var json = new JsonObject
        {
            ["file"] = restored.File,
            ["from"] = restored.From,
            ["migrated"] = restored.Migrated,
            ["replacedKeptAs"] = restored.Kept,
            ["attachments"] = CopyFile.InJson(restored.Attachments),
        };
        return new(json, [.. InWords(restored)]);
    }

    private static IEnumerable<string> InWords(RestoreResult restored)
    {
        yield return Spoken($"{restored.File} now holds what {restored.From} holds{(restored.Migrated ? Spoken(", brought up to date") : "")}.");
        if (restored.Kept is { } kept) yield return Spoken($"What it held before is kept: {kept}");
        foreach (var line in CopyFile.InWords(restored.Attachments)) yield return line;
    }
}
