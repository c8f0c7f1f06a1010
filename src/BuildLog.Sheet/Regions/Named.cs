using BuildLog.Sheet.Content;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What the sheet calls its vehicle, its shop and its date, in the heading as in the page frame and the file's properties.</summary>
internal sealed record Named(string Vehicle, string Shop, string Printed)
{
    public static Named Of(SheetContent sheet) => new(
        OrSaid(sheet.Vehicle.Name, "Vehicle"),
        OrSaid(sheet.Vehicle.ShopName, "Shop"),
        string.IsNullOrWhiteSpace(sheet.PrintedOn) ? $"printing date {Missing.Words}" : $"printed {sheet.PrintedOn}");

    private static string OrSaid(string? name, string what) => string.IsNullOrWhiteSpace(name) ? $"{what} {Missing.Words}" : name;
}
