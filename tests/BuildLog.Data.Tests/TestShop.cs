using BuildLog.Data.Changes;
using BuildLog.Data.Components;
using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using Microsoft.Data.Sqlite;

namespace BuildLog.Data.Tests;

/// <summary>A record on a real file of its own.</summary>
public sealed class TestShop : IDisposable
{
    private readonly List<Shop> opened = [];

    public TestShop()
    {
        EmptyRecord.CopyTo(Path);
        Shop = Open();
    }

    public string Folder { get; } = Directory.CreateTempSubdirectory("buildlog-test-").FullName;

    public string Path => System.IO.Path.Combine(Folder, "shop.db");

    public Shop Shop { get; private set; }

    public Shop Open()
    {
        var shop = ShopFile.Open(Path);
        opened.Add(shop);
        return shop;
    }

    /// <summary>The history of one record, the latest first; also of one that is gone.</summary>
    internal IReadOnlyList<ChangeSet> ChangesOf(Kept record) => [.. Shop.Changes(most: int.MaxValue).Where(change => change.Rows.Any(row => row.RecordUid == record.Uid))];

    /// <summary>Closes the file and opens it again, as the next start of the program does.</summary>
    public void Reopen()
    {
        Shop.Dispose();
        Shop = Open();
    }

    public Vehicle Vehicle(string name, OdometerUnit unit = OdometerUnit.Kilometres) => Shop.Add(new Vehicle { Name = name, OdometerUnit = unit });

    public AxleComponent Axle(string name, string? ratio = null)
        => Shop.Add(new AxleComponent { Name = name, StatedRatio = ratio is null ? null : Noted.Ratio(ratio, RatioRange.Axle, Source.Tag) });

    public TransmissionComponent Gearbox(params string[] ratios)
        => Shop.Add(new TransmissionComponent { Name = "Delmere box", Gears = TransmissionComponent.GearsFrom(Source.MakersData, ratios) });

    public WheelSetComponent Wheels(string? circumference = null, string size = "")
        => Shop.Add(new WheelSetComponent
        {
            Name = "Tarn tyres",
            SizeText = size,
            StatedCircumference = circumference is null ? null : Noted.Length(circumference, Source.MakersData),
        });

    /// <summary>Asks the file itself, past the program.</summary>
    public object? Ask(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={Path};Foreign Keys=True;Pooling=False");
        connection.Open();
        return connection.Ask(sql);
    }

    public void Dispose()
    {
        foreach (var shop in opened) shop.Dispose();
        Directory.Delete(Folder, recursive: true);
    }
}
