using BuildLog.Data;
using BuildLog.Data.Files;
using BuildLog.DemoData;
using Microsoft.Data.Sqlite;

namespace BuildLog.Endurance.CutOff;

/// <summary>Records that are made once in a run and then copied.</summary>
internal sealed class Records
{
    /// <summary>The vehicle of the empty record; the demo shop has none of this name.</summary>
    public const string Vehicle = "Bramble";

    private static readonly string Made = Directory.CreateTempSubdirectory("buildlog-endurance-").FullName;

    private readonly Lazy<string> record;

    private Records(string name, Action<Shop> fill) => record = new(() =>
    {
        var folder = Directory.CreateDirectory(Path.Combine(Made, name)).FullName;
        using (var shop = ShopFile.Open(In(folder))) fill(shop);
        return folder;
    });

    /// <summary>With one vehicle.</summary>
    public static Records Empty { get; } = new("empty", shop => shop.Add(new Data.Vehicles.Vehicle { Name = Vehicle }));

    /// <summary>The whole demo shop, with its attachments.</summary>
    public static Records Demo { get; } = new("demo", DemoShop.Fill);

    /// <summary>The demo shop as an export.</summary>
    public static string DemoArchive => Archive.Value;

    private static Lazy<string> Archive { get; } = new(() =>
    {
        var zip = Path.Combine(Made, "demo.zip");
        using var shop = ShopFile.Open(In(Demo.record.Value));
        shop.Export(zip);
        return zip;
    });

    public static string In(string folder) => Path.Combine(folder, "shop.db");

    public void LayIn(string folder)
    {
        foreach (var file in Directory.EnumerateFiles(record.Value, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(folder, Path.GetRelativePath(record.Value, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy, overwrite: true);
        }
    }

    /// <summary>Asks the file itself, past the program.</summary>
    public static SqliteConnection Connect(string path) => ShopConnection.OpenAlone(path);

    public static void Forget() => Directory.Delete(Made, recursive: true);
}
