using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog sheet VEHICLE --out FILE.pdf</c>: the build sheet.</summary>
internal sealed class SheetCommand : Command
{
    private readonly VehicleArgument vehicle = VehicleArgument.Today();
    private readonly Option<string?> output = new("--out") { Description = "The PDF to write.", HelpName = "FILE.pdf" };
    private readonly Option<string?> paper = new("--paper") { Description = "a4 (if not said) or letter.", HelpName = "a4|letter" };
    private readonly Option<string?> from = new("--from") { Description = "Leave out swaps and sessions before that day.", HelpName = "DATE" };
    private readonly Option<bool> reproducible = new("--reproducible") { Description = "The same record gives the same bytes: the day stands for the time of printing." };
    private readonly Option<bool> overwrite = new("--overwrite") { Description = "Replace a file of that name." };

    public SheetCommand(Edge edge) : base("sheet", "Write the build sheet as PDF.")
    {
        vehicle.AddTo(this);
        Options.Add(output);
        Options.Add(paper);
        Options.Add(from);
        Options.Add(reproducible);
        Options.Add(overwrite);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var file = parse.GetValue(output) ?? throw Reading.Wrong(output.Name, new Refusal("missing", "Name the PDF to write.", "kestrel.pdf"));
        var path = Reading.Of(output.Name, file, SheetFile.Read);
        var size = PaperOf(parse);
        DateOnly? since = parse.GetValue(from) is { } text ? Reading.Of(from.Name, text, typed => DayText.Read(typed, edge.Today)) : null;

        using var shop = edge.OpenShop(parse);
        var bench = vehicle.Read(shop, edge, parse);
        var printed = parse.GetValue(reproducible) ? new DateTimeOffset(edge.Today, TimeOnly.MinValue, TimeSpan.Zero) : edge.Clock.GetLocalNow();
        var content = SheetOfVehicle.Content(bench, edge.Common.UnitsOf(parse), size, printed, since);
        var result = BuildSheetWriter.WriteFile(content, path, parse.GetValue(overwrite));
        var json = new JsonObject
        {
            ["file"] = path,
            ["pages"] = result.Pages,
            ["missingSigns"] = Json.Array(result.MissingSigns, missing => missing.CodePoint),
        };
        return new(json, [SheetForm.InWords(path, result)]);
    }

    private Paper PaperOf(ParseResult parse) => parse.GetValue(paper)?.ToUpperInvariant() switch
    {
        null or "A4" => Paper.A4,
        "LETTER" => Paper.Letter,
        _ => throw Reading.Wrong(paper.Name, new Refusal("paper", $"'{parse.GetValue(paper)}' is no paper: a4 or letter.", "letter")),
    };
}
