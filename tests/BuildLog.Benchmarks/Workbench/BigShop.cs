using System.Globalization;
using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Benchmarks.Workbench;

/// <summary>A shop of a long life: a hundred vehicles, each with a driveline, and ten thousand parts in all.</summary>
internal static class BigShop
{
    public const string Name = "Invented";
    private const int Vehicles = 100;
    private const int Parts = 10_000;

    private static readonly DateOnly Day = new(2024, 5, 3);

    /// <summary>Makes it unless the file is there already: it takes some minutes.</summary>
    public static void MakeAt(string path)
    {
        if (File.Exists(path)) return;
        var making = path + ".making"; // one that was cut short is never taken for the whole
        File.Delete(making);
        using (var shop = ShopFile.Open(making, TimeProvider.System)) Fill(shop);
        File.Move(making, path);
    }

    private static void Fill(Shop shop)
    {
        for (var k = 1; k <= Vehicles; k++)
        {
            var vehicle = shop.Add(new Vehicle { Name = Numbered(Name, k) });
            shop.Fit(new TransmissionComponent { Name = Numbered("Four-speed", k), Gears = TransmissionComponent.GearsFrom(Source.MakersData, "3.64", "2.09", "1.38", "1") }, vehicle, Position.Transmission, Day);
            shop.Fit(Axle(k), vehicle, Position.RearAxle, Day);
            shop.Fit(new WheelSetComponent { Name = Numbered("Wheels", k), SizeText = "205/65R15 94H" }, vehicle, Position.Tyres, Day);
        }

        for (var k = 3 * Vehicles; k < Parts; k++) shop.Add(Axle(k));
    }

    private static AxleComponent Axle(int k) => new() { Name = Numbered("Axle", k), StatedRatio = Noted.Ratio("4.10", RatioRange.Axle, Source.Tag) };

    private static string Numbered(string name, int k) => string.Create(CultureInfo.InvariantCulture, $"{name} {k:00000}");
}
