using System.Globalization;
using BuildLog.Sheet;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Sheets;

/// <summary>Asks where the build sheet goes and on which paper, and writes it.</summary>
public static class SheetForm
{
    public static Form For(VehicleOnBench bench, UnitSystem units, TimeProvider clock, Action<string> said) => new()
    {
        Title = $"Build sheet of {bench.Vehicle.Name}",
        HelpPage = "Sheet",
        SaveCaption = "Write",
        Entries =
        [
            new TextEntry("file", "File") { Initial = UsualName(bench), Hint = "a PDF; a bare name goes to the folder you started in", Check = Forms.Checks.Needed("file", SheetFile.Read) },
            new ChoiceEntry("paper", "Paper", [new(nameof(Paper.A4), "A4"), new(nameof(Paper.Letter), "Letter")]) { Initial = nameof(Paper.A4) },
            new YesNoEntry("overwrite", "Replace a file") { Initial = "no", Hint = "yes: a file of that name is overwritten" },
        ],
        Save = values =>
        {
            try
            {
                var content = SheetOfVehicle.Content(bench, units, Enum.Parse<Paper>(values["paper"]), clock.GetLocalNow());
                var path = SheetFile.Read(values["file"]).OrRefuse();
                var result = BuildSheetWriter.WriteFile(content, path, values.IsYes("overwrite"));
                said(InWords(path, result));
                return SaveOutcome.Done;
            }
            catch (SheetWriteException refused)
            {
                return SaveOutcome.Refuse("file", refused.Message);
            }
        },
    };

    /// <summary>What was written, and what the fonts could not.</summary>
    public static string InWords(string path, SheetResult result)
    {
        var pages = result.Pages == 1 ? "one page" : string.Create(CultureInfo.InvariantCulture, $"{result.Pages} pages");
        return result.MissingSigns.Count == 0
            ? $"Wrote {path}, {pages}."
            : $"Wrote {path}, {pages}; the fonts lack {string.Join(' ', result.MissingSigns.Select(missing => $"{missing.Sign} ({missing.CodePoint})"))}, printed as an empty box.";
    }

    private static string UsualName(VehicleOnBench bench)
    {
        var plain = string.Concat(bench.Vehicle.Name.Select(c => char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-'));
        return $"{plain.Trim('-')}-build-sheet.pdf";
    }
}
