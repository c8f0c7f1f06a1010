using BuildLog.Data.Files;

namespace BuildLog.Data.Tests.Files;

/// <summary>Opens a file, however spoilt, and looks at all that the workbench shows of it.</summary>
internal static class EverythingInAFile
{
    public static void Read(string path)
    {
        using var shop = ShopFile.Open(path);
        _ = shop.Parts();
        _ = shop.Find("pinion");
        foreach (var change in shop.Changes()) _ = change.Fields;
        foreach (var vehicle in shop.Vehicles())
        {
            _ = shop.DrivelineOn(vehicle, new(2026, 1, 1));
            _ = shop.GoalsOf(vehicle);
            _ = shop.Sessions(vehicle);
            _ = shop.History(vehicle);
        }
    }
}
