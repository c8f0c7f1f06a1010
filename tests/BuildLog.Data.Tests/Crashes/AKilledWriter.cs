using BuildLog.Data.Files;
using Xunit;

namespace BuildLog.Data.Tests.Crashes;

public sealed class AKilledWriter : IDisposable
{
    private const int Rounds = 50;

    private readonly TestShop test = new();
    private readonly Random moment = new(20_260_503);

    public void Dispose() => test.Dispose();

    [Fact]
    public void Loses_nothing_that_it_said_was_stored()
    {
        test.Shop.Dispose();
        for (var round = 1; round <= Rounds; round++)
        {
            var stored = RunAndKill(test.Path);
            using var connection = ShopConnection.OpenAlone(test.Path);
            Assert.Empty(stored.Except(connection.Column("SELECT Name FROM Vehicles")));
            Assert.Equal("ok", connection.Ask("PRAGMA integrity_check"));

            // Each change was of two rows.
            Assert.Equal(connection.Ask("SELECT count(*) FROM Vehicles"), connection.Ask("SELECT count(*) FROM Goals JOIN Vehicles ON Vehicles.Id = VehicleId AND Vehicles.Name = Goals.Uid"));
        }

        Assert.Empty(RecordCheck.Of(test.Path).Troubles());
    }

    [Fact]
    public void Through_the_shop_loses_nothing_either()
    {
        test.Shop.Dispose();
        using var writer = new OtherProgram(Writer.ThroughTheShop, test.Path, "kestrel", "1000000");
        var stored = Enumerable.Range(0, 40).Select(_ => writer.ReadLine()!).ToList();
        writer.Kill();
        stored.AddRange(writer.ReadToEnd());

        using var shop = ShopFile.Open(test.Path);
        Assert.Empty(stored.Except(shop.Vehicles().Select(vehicle => vehicle.Name)));
        Assert.Empty(RecordCheck.Of(test.Path).Troubles());
    }

    private List<string> RunAndKill(string path)
    {
        using var writer = new OtherProgram(Writer.ByHand, path);
        var stored = Enumerable.Range(0, moment.Next(1, 40)).Select(_ => writer.ReadLine()!).ToList();
        writer.Kill();

        // What it managed to say before it was gone; a last line that is cut off was never said.
        stored.AddRange(writer.ReadToEnd().Where(line => line.Contains('-', StringComparison.Ordinal)).SkipLast(1));
        return stored;
    }
}
