using System.Globalization;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Options;

namespace BuildLog.Tui.Sheets;

/// <summary>Asks where the build sheet goes, for whom and on which paper, shows it first if wanted, and writes it.</summary>
public static class SheetForm
{
    /// <param name="bench">The vehicle.</param>
    /// <param name="folder">What else the shop keeps of it.</param>
    /// <param name="units">The units to print.</param>
    /// <param name="clock">The time that stands on it.</param>
    /// <param name="host">Asks before a file is replaced and shows the text beforehand.</param>
    /// <param name="ways">The ways out, for options by their place in that list; asked for only then.</param>
    /// <param name="said">Hears what came of it.</param>
    public static Form For(
        VehicleOnBench bench, VehicleFolder folder, UnitSystem units, TimeProvider clock, IFormHost host, Func<IReadOnlyList<Option>> ways, Action<string> said)
    {
        SheetContent Content(SheetWishes wishes) => SheetOfVehicle.Content(bench, folder, wishes, units, clock.GetLocalNow());

        return new()
        {
            Title = $"Build sheet of {bench.Vehicle.Name}",
            HelpPage = "Sheet",
            SaveCaption = "Write",
            Entries =
            [
                new TextEntry("file", "File") { Initial = SheetFile.Usual(bench.Vehicle, "build-sheet"), Hint = "a PDF; a bare name goes to the folder you started in", Check = Forms.Checks.Needed("file", SheetFile.Read) },
                new ChoiceEntry("reader", "For", [.. Enum.GetValues<SheetReader>().Select(reader => new ChoiceOption(reader.ToString(), ReaderWords.InWords(reader)))]) { Initial = nameof(SheetReader.Buyer) },
                new ChoiceEntry("paper", "Paper", [new(nameof(Paper.A4), "A4"), new(nameof(Paper.Letter), "Letter")]) { Initial = nameof(Paper.A4) },
                new YesNoEntry("hours", "With hours") { Initial = "no", Hint = "yes: the work and its hours; the shop's own file always has them" },
                new YesNoEntry("costs", "With costs") { Initial = "no", Hint = "yes: what was paid; the shop's own file always has it" },
                new TextEntry("beside", "Options beside") { Hint = $"such as tyre-up,axle ({NamedChanges.All}); empty: no such table" },
                new YesNoEntry("read", "Read it first") { Initial = "no", Hint = "yes: its text, page by page, before it is written" },
                new YesNoEntry("open", "Open it then") { Initial = "no", Hint = "yes: in the system's viewer" },
            ],
            Save = values =>
            {
                if (values.IsEmpty("beside")) return Save(values, Content(Wishes(values)), host, said);

                var compared = Parsed.From(() => NamedChanges.Beside(bench, values["beside"], ways));
                return compared.Understood(out var table)
                    ? Save(values, Content(Wishes(values) with { Compared = table }), host, said)
                    : SaveOutcome.Refuse("beside", compared.Refusal!.Sentence);
            },
        };
    }

    /// <summary>What was written, and what could not be printed.</summary>
    public static string InWords(string path, SheetResult result)
    {
        var pages = result.Pages == 1 ? "one page" : string.Create(CultureInfo.InvariantCulture, $"{result.Pages} pages");
        var missing = result.MissingSigns.Count == 0
            ? "."
            : $"; the fonts lack {string.Join(' ', result.MissingSigns.Select(missing => $"{missing.Sign} ({missing.CodePoint})"))}, printed as an empty box.";
        return string.Join(' ', [$"Wrote {path}, {pages}{missing}", .. result.SkippedPhotos]);
    }

    private static SheetWishes Wishes(FormValues values)
        => new(Enum.Parse<SheetReader>(values["reader"]), Enum.Parse<Paper>(values["paper"]), WithHours: values.IsYes("hours"), WithCosts: values.IsYes("costs"));

    private static SaveOutcome Save(FormValues values, SheetContent content, IFormHost host, Action<string> said)
    {
        var path = SheetFile.Read(values["file"]).OrRefuse();
        if (values.IsYes("read") && !ReadFirst(content, host))
        {
            said("Nothing was written.");
            return SaveOutcome.Done;
        }

        var exists = File.Exists(path);
        if (exists && !host.Confirm(new("Replace the file?", $"{path} is already there. The new sheet would take its place.", "Replace", "Keep it")))
            return SaveOutcome.Refuse("file", "That file is kept: give another name.");

        try
        {
            var result = BuildSheetWriter.WriteFile(content, path, overwrite: exists);
            var opened = values.IsYes("open") ? SystemViewer.Open(path) : null;
            said(opened is null ? InWords(path, result) : $"{InWords(path, result)} {opened}");
            return SaveOutcome.Done;
        }
        catch (SheetWriteException refused)
        {
            return SaveOutcome.Refuse("file", refused.Message);
        }
    }

    private static bool ReadFirst(SheetContent content, IFormHost host)
    {
        var preview = BuildSheetWriter.Preview(content);
        host.Tell("What the sheet will say", [.. preview.Lines]);
        return host.Confirm(new("Write it?", "That is what the sheet says.", "Write", "Not now"));
    }
}
