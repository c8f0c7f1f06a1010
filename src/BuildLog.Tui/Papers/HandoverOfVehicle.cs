using BuildLog.Data.Moving;
using BuildLog.Sheet;
using BuildLog.Sheet.Photos;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Commands;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Papers;

/// <summary>What goes with a vehicle when it changes hands, beside its part of the record: a text that says what is what, the build sheet, the list of receipts, photos fit to leave the shop.</summary>
public static class HandoverOfVehicle
{
    private const string SheetName = "build-sheet.pdf";
    private const string ReceiptsName = "receipts.csv";

    /// <returns>The papers, and what had to be said of the sheet.</returns>
    public static (Handover Handover, SheetResult Sheet) Of(VehicleOnBench bench, VehicleFolder folder, SheetWishes wishes, UnitSystem units, DateTimeOffset printed)
    {
        using var pdf = new MemoryStream();
        var sheet = BuildSheetWriter.Write(SheetOfVehicle.Content(bench, folder, wishes, units, printed), pdf);
        var receipts = CostsOfVehicle.Content(bench.Vehicle, folder, AccountSpan.All, wishes.Paper, printed);
        byte[] csv = [.. AccountCsv.Encoding.Preamble, .. AccountCsv.Encoding.GetBytes(AccountCsv.Text(receipts))];
        return (new([new(HandoverReadMe.Name, HandoverReadMe.Of(bench.Vehicle, folder.ShopName, printed)), new(SheetName, pdf.ToArray()), new(ReceiptsName, csv)], PhotoCopy.Of), sheet);
    }

    /// <summary>What was written, and what could not go with it.</summary>
    public static IReadOnlyList<string> InWords(ExportReport written, SheetResult sheet)
        => [Spoken($"Wrote {written.File} ({FileSize.InWords(written.Bytes)}): {MovedWords.InWords(written.Entries)}."), .. sheet.SkippedPhotos, .. StayedBehind(written.Lacking)];

    private static IEnumerable<string> StayedBehind(IReadOnlyList<string> names)
    {
        if (names.Count > 0) yield return Spoken($"Stayed behind, as the file is missing, altered, or a photo that cannot be copied without what it tells of place and time: {string.Join(", ", names)}");
    }
}
