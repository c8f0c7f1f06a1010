using BuildLog.Data.Components;
using BuildLog.Data.Files;
using BuildLog.Data.Tests.Crashes;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using Xunit;

namespace BuildLog.Data.Tests.Files;

public sealed class AMigrationThatIsCutOff : IDisposable
{
    private const int Rounds = 8;

    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;

    private string Record => Path.Combine(folder, "shop.db");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    // The moments are spread over the two seconds or so that it takes.
    [Fact]
    public async Task Leaves_the_older_record_and_the_next_start_begins_anew()
    {
        for (var round = 0; round < Rounds; round++)
        {
            File.Delete(Record);
            EarlierRecord.Make("WholeMarriage.sql", Record);
            using (var program = new OtherProgram(Writer.Opening, Record))
            {
                Assert.Equal("opening", program.ReadLine());
                await Task.Delay(TimeSpan.FromMilliseconds(250 * round), TestContext.Current.CancellationToken);
                program.Kill();
                program.ReadToEnd();
            }

            using var shop = ShopFile.Open(Record);
            Assert.Equal(36, shop.Vehicles().Sum(vehicle => shop.Fitments(vehicle).Count));
            Assert.NotEmpty(shop.Find("pinion chipped"));
            Assert.Empty(RecordCheck.Of(Record).Troubles());
            Assert.Empty(Directory.GetFiles(folder, "shop.db.new*"));
        }
    }

    // As it lies when the schema is there, but not what the migrations do not hold.
    [Fact]
    public void Is_finished_by_the_next_start()
    {
        using (var made = ShopFile.Open(Record))
        {
            made.Fit(new AxleComponent { Name = "Harrow axle" }, made.Add(new Vehicle { Name = "Brindle" }), Position.RearAxle, new(2026, 5, 3));
        }

        using (var connection = ShopConnection.OpenAlone(Record))
        {
            connection.Run("PRAGMA journal_mode = DELETE");
            connection.Run(string.Concat(Triggers.Names.Select(name => $"DROP TRIGGER \"{name}\";")));
            connection.Run("DELETE FROM Findables; DROP TABLE FindableText");
        }

        using var shop = ShopFile.Open(Record);
        Assert.Contains(shop.Find("harrow"), found => found is { Kind: "axle", Title: "Harrow axle" });
        Assert.Contains(shop.Find("brindle"), found => found is { Kind: "vehicle", Title: "Brindle" });
        Assert.Empty(RecordCheck.Of(Record).Troubles());
    }

    [Fact]
    public void Is_not_begun_while_another_program_has_the_record_open()
    {
        EarlierRecord.Make("WholeMarriage.sql", Record);
        using var other = ShopConnection.OpenAlone(Record);
        other.Run("PRAGMA journal_mode = WAL");
        _ = other.Ask("SELECT count(*) FROM Vehicles");
        var refused = Assert.Throws<RecordException>(() => ShopFile.Open(Record));
        Assert.Equal((Fault.Busy, $"Another program has {Record} open. Close it and try again; nothing was changed."), (refused.Fault, refused.Message));
        Assert.Equal(2L, other.Ask("SELECT count(*) FROM __EFMigrationsHistory"));
    }
}
