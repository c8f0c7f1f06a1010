using BuildLog.Data.Files;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>The demo shop as an earlier schema held it; today's program opens it when the shop is asked for the first time.</summary>
internal sealed class EarlierShop : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;
    private readonly Lazy<Shop> shop;

    /// <param name="dump">The file that holds it as text.</param>
    public EarlierShop(string dump)
    {
        Path = System.IO.Path.Combine(folder, "shop.db");
        Text = EarlierRecord.Make(dump, Path);
        shop = new(() => ShopFile.Open(Path));
    }

    public string Path { get; }

    /// <summary>The dump itself.</summary>
    public string Text { get; }

    public Shop Shop => shop.Value;

    /// <summary>Brought up to date it has these rows, and the tables and the search of a new record.</summary>
    public void AssertIsOfToday(params IReadOnlyList<(string Table, long Rows)> counted)
    {
        _ = Shop.Vehicles();
        using var connection = ShopConnection.OpenAlone(Path);
        Assert.Equal(counted, counted.Select(each => (each.Table, (long)connection.Ask($"SELECT count(*) FROM {each.Table}")!)));

        using var fresh = new TestShop();
        Assert.Equal(fresh.Ask(EarlierRecord.Schema), connection.Ask(EarlierRecord.Schema));
        Assert.Equal(fresh.Ask("SELECT sql FROM sqlite_master WHERE name = 'FindableText'"), connection.Ask("SELECT sql FROM sqlite_master WHERE name = 'FindableText'"));
    }

    /// <summary>Sound but for the pictures, where there are any: the dump is of the record alone.</summary>
    public void AssertSoundButForItsFiles() => Assert.All(RecordCheck.Of(Path).Troubles(), trouble => Assert.StartsWith("Attachments are missing: ", trouble, StringComparison.Ordinal));

    public void Dispose()
    {
        if (shop.IsValueCreated) shop.Value.Dispose();
        Directory.Delete(folder, recursive: true);
    }
}
