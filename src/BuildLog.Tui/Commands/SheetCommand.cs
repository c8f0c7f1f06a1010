using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Sheet;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Preview;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Options;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog sheet VEHICLE --out FILE.pdf</c>: the build sheet, or its text beforehand.</summary>
internal sealed class SheetCommand : Command
{
    private readonly VehicleArgument vehicle = VehicleArgument.Today();
    private readonly PaperOptions paper = new();
    private readonly Option<string?> reader = new("--for") { Description = Spoken("Whom it is for (the buyer, if not said): decides what it contains; own is everything."), HelpName = ReaderWords.All };
    private readonly Option<string?> from = new("--from") { Description = Spoken("Leave out swaps and sessions before that day."), HelpName = "DATE" };
    private readonly Option<bool> hours = new("--hours") { Description = Spoken("With the work and its hours.") };
    private readonly Option<bool> costs = new("--costs") { Description = Spoken("With what was paid.") };
    private readonly Option<string?> beside = new("--beside") { Description = Spoken("With what is fitted beside one to three changes, or places in the list of buildlog options."), HelpName = NamedChanges.All };
    private readonly Option<string?> photo = new("--photo") { Description = Spoken("The photo beside the title, if not the first one attached to the vehicle: JPEG, PNG or WebP."), HelpName = "FILE" };
    private readonly Option<string[]> before = new("--before") { Description = Spoken("One more photo from before the work; may be repeated."), HelpName = "FILE" };
    private readonly Option<string[]> after = new("--after") { Description = Spoken("One more photo from after the work; may be repeated."), HelpName = "FILE" };
    private readonly Option<bool> preview = new("--preview") { Description = Spoken("Print its text, page by page, and write nothing.") };

    public SheetCommand(Edge edge) : base("sheet", Spoken("Write the build sheet as PDF."))
    {
        vehicle.AddTo(this);
        paper.AddTo(this);
        Options.Add(reader);
        Options.Add(from);
        Options.Add(hours);
        Options.Add(costs);
        Options.Add(beside);
        Options.Add(photo);
        Options.Add(before);
        Options.Add(after);
        Options.Add(preview);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        if (parse.GetValue(preview)) return Preview(Content(edge, parse), edge.Columns);

        var path = paper.File(parse);
        var content = Content(edge, parse);
        return paper.Write(parse, path, (file, overwrite) => BuildSheetWriter.WriteFile(content, file, overwrite));
    }

    private SheetContent Content(Edge edge, ParseResult parse)
    {
        var wishes = new SheetWishes(
            parse.GetValue(reader) is { } name ? Reading.Of(reader.Name, name, ReaderWords.Read) : SheetReader.Buyer,
            paper.Paper(parse),
            parse.GetValue(from) is { } text ? Reading.Of(from.Name, text, typed => DayText.Read(typed, edge.Today)) : null,
            parse.GetValue(hours),
            parse.GetValue(costs));
        var title = parse.GetValue(photo) is { } file ? Reading.Of(photo.Name, file, path => PhotoFile.Read(path, PhotoMoment.Any)) : null;
        SheetPhoto[] photos = [.. Photos(parse, before, PhotoMoment.Before), .. Photos(parse, after, PhotoMoment.After)];

        using var shop = edge.OpenShop(parse);
        var bench = vehicle.Read(shop, edge, parse);
        if (parse.GetValue(beside) is { } changes)
            wishes = wishes with { Compared = Reading.Blaming(beside.Name, () => NamedChanges.Beside(bench, changes, () => WaysOut.Of(shop, bench, new(), edge.Today))) };
        var content = SheetOfVehicle.Content(bench, VehicleFolder.Read(shop, bench.Vehicle), wishes, edge.Common.UnitsOf(parse), paper.Printed(edge, parse));
        return content with { TitlePhoto = title ?? content.TitlePhoto, Photos = [.. content.Photos, .. photos] };
    }

    private static IEnumerable<SheetPhoto> Photos(ParseResult parse, Option<string[]> option, PhotoMoment when)
        => (parse.GetValue(option) ?? []).Select(file => Reading.Of(option.Name, file, path => PhotoFile.Read(path, when)));

    // As wide as the terminal, with its charts drawn; what a program reads has one width.
    private static Answer Preview(SheetContent content, int? columns)
    {
        var preview = BuildSheetWriter.Preview(content);
        var json = new JsonObject
        {
            ["pages"] = Json.Array(preview.Pages, page => Json.Array(page.Lines(PreviewSetup.Usual), line => line)),
            ["missingSigns"] = Json.Array(preview.MissingSigns, missing => missing.CodePoint),
            ["skippedPhotos"] = Json.Array(preview.SkippedPhotos, skipped => skipped),
        };
        return new(json, [.. columns is { } width ? SheetAsText.Of(preview, width).Select(line => line.Text) : preview.Lines(PreviewSetup.Usual), .. preview.SkippedPhotos]);
    }
}
