using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Papers;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog handover VEHICLE --out FILE.zip</c>: everything that goes with a vehicle, for people and for the next shop's record.</summary>
internal sealed class HandoverCommand : Command
{
    private readonly VehicleArgument vehicle = VehicleArgument.Today();
    private readonly PaperOptions paper = new(PaperKind.Bundle);
    private readonly Option<string?> reader = new("--for") { Description = Spoken("Whom the sheet in it is for (the buyer, if not said)."), HelpName = ReaderWords.All };

    public HandoverCommand(Edge edge) : base("handover", Spoken("Write the zip that goes with a vehicle: sheet, photos without place or time, receipts, and its record for the next shop to import."))
    {
        vehicle.AddTo(this);
        paper.AddTo(this);
        Options.Add(reader);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var path = paper.File(parse);
        var wishes = new SheetWishes(parse.GetValue(reader) is { } name ? Reading.Of(reader.Name, name, ReaderWords.Read) : SheetReader.Buyer, paper.Paper(parse));
        using var shop = edge.OpenShop(parse);
        var bench = vehicle.Read(shop, edge, parse);
        var (handover, sheet) = HandoverOfVehicle.Of(bench, VehicleFolder.Read(shop, bench.Vehicle), wishes, edge.Common.UnitsOf(parse), paper.Printed(edge, parse));
        return paper.Write(parse, path, overwrite =>
        {
            var written = shop.HandOver(path, bench.Vehicle, handover, overwrite);
            var json = new JsonObject
            {
                ["file"] = written.File,
                ["bytes"] = written.Bytes,
                ["sheetPages"] = sheet.Pages,
                ["entries"] = MovedWords.InJson(written.Entries),
                ["missingSigns"] = Json.Array(sheet.MissingSigns, missing => missing.CodePoint),
                ["skippedPhotos"] = Json.Array(sheet.SkippedPhotos, skipped => skipped),
                ["attachmentsLacking"] = Json.Array(written.Lacking, lacking => lacking),
            };
            return new(json, HandoverOfVehicle.InWords(written, sheet));
        });
    }
}
