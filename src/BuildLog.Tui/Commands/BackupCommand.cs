using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Data.Files;
using BuildLog.Tui.Papers;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog backup FILE</c>: a checked copy of the record, with its attachments beside it.</summary>
internal sealed class BackupCommand : Command
{
    private readonly Argument<string> file = new("FILE") { Description = Spoken("The copy to write, such as one on a stick; it can be opened like any record.") };
    private readonly Option<bool> overwrite = new("--overwrite") { Description = Spoken("Replace an earlier copy of that name.") };

    public BackupCommand(Edge edge) : base("backup", Spoken("Copy the record and its attachments to another place."))
    {
        Arguments.Add(file);
        Options.Add(overwrite);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var path = Reading.Of(file.Name, parse.GetValue(file)!, CopyFile.Read);
        var copy = Backup.To(edge.RecordPath(parse), path, parse.GetValue(overwrite));
        var json = new JsonObject
        {
            ["file"] = copy.File,
            ["bytes"] = copy.Bytes,
            ["attachments"] = CopyFile.InJson(copy.Attachments),
        };
        return new(json, [Spoken($"Copied to {copy.File} ({FileSize.InWords(copy.Bytes)}) and checked."), .. CopyFile.InWords(copy.Attachments)]);
    }
}
