using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using Xunit;

namespace BuildLog.Data.Tests.Files;

public sealed class ANewFile : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Is_made_empty_and_stays_after_closing()
    {
        var path = Path.Combine(folder, "shop.db");
        using (var shop = ShopFile.Open(path)) Assert.Empty(shop.Vehicles());
        Assert.True(File.Exists(path));
        using var again = ShopFile.Open(path);
        Assert.Empty(again.Vehicles());
    }

    [Fact]
    public void Can_be_read_by_its_owner_only()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("The user's data folder guards it there.");
            return;
        }

        var path = Path.Combine(folder, "shop.db");
        ShopFile.Open(path).Dispose();
        foreach (var file in Directory.GetFiles(folder))
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
    }

    [Fact]
    public void Writes_ahead_and_waits_for_the_disk()
    {
        using var test = new TestShop();
        Assert.Equal("wal", test.Ask("PRAGMA journal_mode"));
        Assert.Equal(2L, test.Ask("PRAGMA synchronous"));
        Assert.Equal(1L, test.Ask("PRAGMA foreign_keys"));
    }

    [Fact]
    public void Leaves_nothing_half_made_beside_it()
    {
        ShopFile.Open(Path.Combine(folder, "shop.db")).Dispose();
        Assert.Equal(["shop.db", "shop.db.lock"], Directory.GetFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Is_made_once_when_several_open_it_at_once()
    {
        var path = Path.Combine(folder, "shop.db");
        var token = TestContext.Current.CancellationToken;
        var shops = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => ShopFile.Open(path), token)));
        shops[0].Add(new Vehicle { Name = "Brindle" });
        Assert.All(shops, shop => Assert.Equal("Brindle", Assert.Single(shop.Vehicles()).Name));
        foreach (var shop in shops) shop.Dispose();
    }
}
