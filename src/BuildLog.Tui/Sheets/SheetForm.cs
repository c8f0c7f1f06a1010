using BuildLog.Data;
using BuildLog.Data.Files;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Options;
using BuildLog.Tui.Papers;

namespace BuildLog.Tui.Sheets;

/// <summary>Asks where the build sheet goes, for whom and on which paper, shows it first if wanted, and writes it; to a zip, with all that goes with the vehicle.</summary>
public sealed class SheetForm
{
    private readonly Shop shop;
    private readonly VehicleOnBench bench;
    private readonly UnitSystem units;
    private readonly TimeProvider clock;
    private readonly SearchWish search;
    private readonly IFormHost host;
    private readonly Action<string> said;

    private SheetForm(Shop shop, VehicleOnBench bench, UnitSystem units, TimeProvider clock, SearchWish search, IFormHost host, Action<string> said)
        => (this.shop, this.bench, this.units, this.clock, this.search, this.host, this.said) = (shop, bench, units, clock, search, host, said);

    private Form Asked => new()
    {
        Title = Spoken($"Build sheet of {bench.Vehicle.Name}"),
        HelpPage = "Sheet",
        SaveCaption = Spoken("Write"),
        Entries =
        [
            new TextEntry("file", Spoken("File"))
            {
                Initial = SheetFile.Usual(bench.Vehicle, "build-sheet"),
                Hint = Spoken("a PDF; or a zip: sheet, photos, receipts, record"),
                Check = Forms.Checks.Needed("file", SheetFile.ReadSheet),
            },
            new ChoiceEntry("reader", Spoken("For"), [.. Enum.GetValues<SheetReader>().Select(reader => new ChoiceOption(reader.ToString(), ReaderWords.InWords(reader)))]) { Initial = nameof(SheetReader.Buyer) },
            new ChoiceEntry("paper", Spoken("Paper"), PrintForm.WholePages) { Initial = PrintForm.WholePages[0].Value },
            new TextEntry("from", Spoken("From")) { Hint = Spoken("a day: nothing that happened before; empty for all"), Check = Forms.Checks.IfTyped("from", Day) },
            new YesNoEntry("hours", Spoken("With hours")) { IsYes = false, Hint = Spoken("yes: the work and its hours; the shop's own file always has them") },
            new YesNoEntry("costs", Spoken("With costs")) { IsYes = false, Hint = Spoken("yes: what was paid; the shop's own file always has it") },
            new TextEntry("beside", Spoken("Options beside"))
            {
                Hint = Spoken($"what to set beside today's, with commas between: {NamedChanges.All.Replace(",", ", ", StringComparison.Ordinal).Replace("PLACE", Spoken("the number of a way out on the page Options"), StringComparison.Ordinal)}; empty: none"),
            },
            new YesNoEntry("read", Spoken("Read it first")) { IsYes = false, Hint = Spoken("yes: its text, page by page, before it is written") },
            new YesNoEntry("open", Spoken("Open it then")) { IsYes = false, Hint = Spoken("yes: in the system's viewer") },
        ],
        Save = Save,
    };

    /// <param name="shop">The record.</param>
    /// <param name="bench">The vehicle.</param>
    /// <param name="units">The units to print.</param>
    /// <param name="clock">The time that stands on it.</param>
    /// <param name="search">What the page of options searches: its numbers are meant here.</param>
    /// <param name="host">Asks before a file is replaced and shows the text beforehand.</param>
    /// <param name="said">Hears what came of it.</param>
    public static Form For(Shop shop, VehicleOnBench bench, UnitSystem units, TimeProvider clock, SearchWish search, IFormHost host, Action<string> said)
        => new SheetForm(shop, bench, units, clock, search, host, said).Asked;

    /// <summary>What was written, and what could not be printed.</summary>
    public static string InWords(string path, SheetResult result)
    {
        var pages = result.Pages == 1 ? Spoken("one page") : Spoken($"{result.Pages} pages");
        var missing = result.MissingSigns.Count == 0
            ? "."
            : Spoken($"; the fonts lack {string.Join(' ', result.MissingSigns.Select(missing => $"{missing.Sign} ({missing.CodePoint})"))}, printed as an empty box.");
        return string.Join(' ', [Spoken($"Wrote {path}, {pages}{missing}"), .. result.SkippedPhotos]);
    }

    private Parsed<DateOnly> Day(string text) => DayText.ReadPast(text, clock.Today());

    private SheetWishes Wishes(FormValues values) => new(
        Enum.Parse<SheetReader>(values["reader"]), Enum.Parse<Paper>(values["paper"]), values.IsEmpty("from") ? null : Day(values["from"]).OrRefuse(), values.IsYes("hours"), values.IsYes("costs"));

    private SaveOutcome Save(FormValues values)
    {
        var path = SheetFile.ReadSheet(values["file"]).OrRefuse();
        var (folder, wishes, printed) = (VehicleFolder.Read(shop, bench.Vehicle), Wishes(values), clock.GetLocalNow());
        if (!values.IsEmpty("beside"))
        {
            var compared = Parsed.From(() => NamedChanges.Beside(bench, values["beside"], () => WaysOut.Of(shop, bench, search, clock.Today())));
            if (!compared.Understood(out var table)) return SaveOutcome.Refuse("beside", compared.Refusal!.Sentence);

            wishes = wishes with { Compared = table };
        }

        var content = SheetOfVehicle.Content(bench, folder, wishes, units, printed);
        if (values.IsYes("read") && !ReadFirst(content))
        {
            said(Spoken("Nothing was written."));
            return SaveOutcome.Done;
        }

        var exists = File.Exists(path);
        if (exists && !host.Confirm(new(Spoken("Replace the file?"), Spoken($"{path} is already there. The new one would take its place."), Spoken("Replace"), Spoken("Keep it"))))
            return SaveOutcome.Refuse("file", Spoken("That file is kept: give another name."));

        try
        {
            var written = SheetFile.IsBundle(path) ? HandOver(path, folder, wishes, printed, exists) : InWords(path, BuildSheetWriter.WriteFile(content, path, overwrite: exists));
            var opened = values.IsYes("open") ? SystemViewer.Open(path) : null;
            said(opened is null ? written : $"{written} {opened}");
            return SaveOutcome.Done;
        }
        catch (Exception refused) when (refused is SheetWriteException or RecordException)
        {
            return SaveOutcome.Refuse("file", refused.Message);
        }
    }

    private string HandOver(string path, VehicleFolder folder, SheetWishes wishes, DateTimeOffset printed, bool overwrite)
    {
        var (handover, sheet) = HandoverOfVehicle.Of(bench, folder, wishes, units, printed);
        return string.Join(' ', HandoverOfVehicle.InWords(shop.HandOver(path, bench.Vehicle, handover, overwrite), sheet));
    }

    private bool ReadFirst(SheetContent content)
    {
        var preview = BuildSheetWriter.Preview(content);
        host.Tell(Spoken("What the sheet will say"), width => SheetAsText.Of(preview, width));
        return host.Confirm(new(Spoken("Write it?"), Spoken("That is what the sheet says."), Spoken("Write"), Spoken("Not now")));
    }
}
