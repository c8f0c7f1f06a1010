using BuildLog.Sheet.Content;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What the sheet calls its vehicle, its shop (empty where nobody named it) and its date, in the heading as in the page frame and the file's properties.</summary>
internal sealed record Named(string Vehicle, string Shop, string Printed)
{
    public static Named Of(SheetContent sheet) => new(
        string.IsNullOrWhiteSpace(sheet.Vehicle.Name) ? Spoken($"Vehicle {Missing.Words}") : sheet.Vehicle.Name,
        sheet.Vehicle.ShopName?.Trim() ?? "",
        string.IsNullOrWhiteSpace(sheet.PrintedOn) ? Spoken($"printing date {Missing.Words}") : Spoken($"printed {sheet.PrintedOn}"));
}
