using BuildLog.Data.Costs;
using Microsoft.Data.Sqlite;

namespace BuildLog.Tui.Tests.Commands;

/// <summary>Finding, and going back and forth, on a record that lies on disk between the commands.</summary>
public sealed class ChangesAndSearchTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-commands-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Undo_and_redo_go_back_and_forth_between_runs_of_the_program()
    {
        var file = Path.Combine(folder, "shop.db");
        using (var shop = BuildLog.Data.Files.ShopFile.Open(file)) shop.Add(new BuildLog.Data.Vehicles.Vehicle { Name = "Brindle" });

        Assert.Equal("Undid: added vehicle Brindle.", Said.By("undo", "--database", file).Output.TrimEnd());
        Assert.Equal(0, Said.By("vehicles", "--database", file, "--json").Json.GetProperty("vehicles").GetArrayLength());
        Assert.Equal("added vehicle Brindle", Said.By("redo", "--database", file, "--json").Json.GetProperty("redid").GetString());
        Assert.Equal(1, Said.By("vehicles", "--database", file, "--json").Json.GetProperty("vehicles").GetArrayLength());

        var nothing = Said.By("redo", "--database", file, "--json");
        Assert.Equal(2, nothing.ExitCode);
        Assert.Equal("undo", nothing.Error.GetProperty("code").GetString());

        var changes = Said.By("changes", "brin", "--database", file, "--json").Json.GetProperty("changes");
        Assert.Equal(["did again: added vehicle Brindle", "undid: added vehicle Brindle", "added vehicle Brindle"], changes.EnumerateArray().Select(change => change.GetProperty("did").GetString()));
        Assert.Equal(changes[1].GetProperty("id").GetInt64(), changes[0].GetProperty("undoes").GetInt64());
    }

    [Fact]
    public void A_row_taken_in_is_one_row_and_a_price_that_changed_is_money()
    {
        var (file, list) = (Path.Combine(folder, "shop.db"), Path.Combine(folder, "parts.csv"));
        File.WriteAllText(list, "kind,name,price\naxle,Harrow axle,120 EUR\n");

        Assert.StartsWith("1 row was added; ", Said.By("csv", "parts", "--in", list, "--database", file).Output, StringComparison.Ordinal);
        Assert.StartsWith("0 rows were added; ", Said.By("csv", "parts", "--in", list, "--database", file).Output, StringComparison.Ordinal);

        using (var shop = BuildLog.Data.Files.ShopFile.Open(file)) shop.Change(shop.Parts().Single().Component, part => part.Price = Money.Of(1234500, Currency.Euro));
        Assert.Contains("  price: 120.00 EUR -> 12345.00 EUR", Said.By("changes", "--database", file).Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_command_that_finds_another_program_writing_says_so_and_waits_for_it()
    {
        var file = Path.Combine(folder, "shop.db");
        using (var shop = BuildLog.Data.Files.ShopFile.Open(file)) shop.Add(new BuildLog.Data.Vehicles.Vehicle { Name = "Brindle" });

        await using var other = new SqliteConnection($"Data Source={file};Pooling=False");
        await other.OpenAsync(TestContext.Current.CancellationToken);
        await using var held = await other.BeginTransactionAsync(TestContext.Current.CancellationToken);
        var undoing = Task.Run(() => Said.By("undo", "--database", file), TestContext.Current.CancellationToken);
        await Task.Delay(TimeSpan.FromSeconds(4), TestContext.Current.CancellationToken);
        await held.RollbackAsync(TestContext.Current.CancellationToken);
        var said = await undoing;
        Assert.Equal((0, "Undid: added vehicle Brindle."), (said.ExitCode, said.Output.TrimEnd()));
        Assert.StartsWith("Waiting, ", said.Errors, StringComparison.Ordinal);
        Assert.Contains($"another program is writing to {file}.", said.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Find_reaches_reasons_and_names_vehicle_and_part()
    {
        var found = Said.By("find", "pinion", "chip", "--demo", "--json").Json.GetProperty("found");

        Assert.Contains(found.EnumerateArray(), one => one.GetProperty("kind").GetString() == "fitment" && one.GetProperty("vehicle").GetString() == "Brindle" && one.GetProperty("part").GetString() == "Harrow yard axle");
    }

    [Fact]
    public void Find_says_that_there_is_nothing()
        => Assert.Equal("Nothing in the record holds '( zebra'.", Said.By("find", "(", "zebra", "--demo").Output.TrimEnd());

    [Theory]
    [InlineData("0")]
    [InlineData("many")]
    public void A_number_of_entries_that_is_none_is_wrong_input(string most)
    {
        var said = Said.By("changes", "--demo", "--most", most);

        Assert.Equal(2, said.ExitCode);
        Assert.StartsWith($"--most: '{most}' is no number of entries", said.Errors, StringComparison.Ordinal);
    }
}
