using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Tui.Papers;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog export FILE.zip</c>: the record, or one vehicle, as a zip of JSON with its attachments.</summary>
internal sealed class ExportCommand : Command
{
    private readonly Argument<string> file = new("FILE") { Description = Spoken("The zip to write.") };
    private readonly Option<string?> vehicle = new("--vehicle") { Description = Spoken("Only what belongs to this vehicle."), HelpName = "VEHICLE" };
    private readonly Option<bool> overwrite = new("--overwrite") { Description = Spoken("Replace a file of that name.") };

    public ExportCommand(Edge edge) : base("export", Spoken("Write everything, or one vehicle, as a zip that another shop can import."))
    {
        Arguments.Add(file);
        Options.Add(vehicle);
        Options.Add(overwrite);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var path = Reading.Of(file.Name, parse.GetValue(file)!, CopyFile.Read);
        using var shop = edge.OpenShop(parse);
        var only = parse.GetValue(vehicle) is { } name ? Reading.Blaming(vehicle.Name, () => shop.FindVehicle(name)) : null;
        var written = shop.Export(path, only, parse.GetValue(overwrite));
        var json = new JsonObject
        {
            ["file"] = written.File,
            ["bytes"] = written.Bytes,
            ["entries"] = MovedWords.InJson(written.Entries),
            ["attachmentsLacking"] = Json.Array(written.Lacking, name => name),
        };
        return new(json, [Spoken($"Written to {written.File} ({FileSize.InWords(written.Bytes)}): {MovedWords.InWords(written.Entries)}."), .. MovedWords.Lacking(written.Lacking)]);
    }
}
