namespace BuildLog.Tui.Tests.Commands;

/// <summary>Commands that read the shop, on the demo shop and on files that are none.</summary>
public sealed class RecordCommandsTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-commands-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Vehicles_lists_the_demo_shop()
    {
        var names = Said.By("vehicles", "--demo", "--json").Json.GetProperty("vehicles").EnumerateArray().Select(vehicle => vehicle.GetProperty("name").GetString()).ToList();

        Assert.Contains("Brindle", names);
        Assert.True(names.Count >= 4);
    }

    [Theory]
    [InlineData("Brindle", "clash", 1)]
    [InlineData("Brindle", "watch", 1)]
    [InlineData("Haldor", "clash", 0)]
    [InlineData("Pellow", "open", 1)]
    [InlineData("Pellow", "clash", 0)]
    public void Fail_on_means_that_or_worse(string vehicle, string limit, int exitCode)
        => Assert.Equal(exitCode, Said.By("findings", vehicle, "--demo", "--fail-on", limit).ExitCode);

    [Fact]
    public void Findings_of_an_earlier_day_judge_what_was_fitted_then()
    {
        var before = Said.By("findings", "Brindle", "--on", "2024-06-01", "--demo", "--json");

        Assert.Equal("2024-06-01", before.Json.GetProperty("onDate").GetString());
        Assert.Equal("fits", before.Json.GetProperty("findings").EnumerateArray().Single(finding => finding.GetProperty("check").GetString() == "cruise").GetProperty("verdict").GetString());
    }

    [Fact]
    public void History_says_what_each_swap_changed()
    {
        var last = Said.By("history", "Brindle", "--demo", "--json").Json.GetProperty("entries").EnumerateArray().Last();

        Assert.Equal("axle", last.GetProperty("position").GetString());
        Assert.Equal(0, last.GetProperty("clashBefore").GetInt32());
        Assert.Equal(1, last.GetProperty("clashAfter").GetInt32());
        Assert.True(last.GetProperty("cruiseRpmAfter").GetDouble() > last.GetProperty("cruiseRpmBefore").GetDouble());
    }

    // 6/22 · 41/11 = 1.01653 turns a wheel turn, 870 wanted a mile: on 1.84 m 1.0220 of the truth, on the 1.936 m that were rolled 0.9713.
    [Fact]
    public void History_says_what_other_tyres_do_to_the_speedometer()
    {
        var tyres = Said.By("history", "Tansy", "--demo", "--json").Json.GetProperty("entries").EnumerateArray().Last(entry => entry.GetProperty("position").GetString() == "tyres");

        Assert.Equal(102.2, tyres.GetProperty("shownAt100KmhBefore").GetDouble(), 0.1);
        Assert.Equal(97.1, tyres.GetProperty("shownAt100KmhAfter").GetDouble(), 0.1);
        Assert.Contains("; the speedometer shows 97", Said.By("history", "Tansy", "--demo").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Zzz", "No vehicle is called 'Zzz'")]
    [InlineData("", "could be")]
    public void A_vehicle_that_is_none_or_several_is_wrong_input(string name, string sentence)
    {
        var said = Said.By("findings", name, "--demo");

        Assert.Equal(2, said.ExitCode);
        Assert.Contains(sentence, said.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_no_database_is_not_touched()
    {
        var file = Path.Combine(folder, "notes.txt");
        File.WriteAllText(file, "buy gaskets, more than sixteen bytes of them");

        var said = Said.By("vehicles", "--database", file);

        Assert.Equal(3, said.ExitCode);
        Assert.Single(said.Errors.TrimEnd().Split('\n'));
        Assert.Equal("buy gaskets, more than sixteen bytes of them", File.ReadAllText(file));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_a_sentence()
        => Assert.Equal(3, Said.By("vehicles", "--database", Path.Combine(folder, "no", "such", "shop.db"), "--json").ExitCode);

    [Fact]
    public void The_sheet_is_written_once_and_not_over_another_file_unasked()
    {
        var file = Path.Combine(folder, "brindle.pdf");

        Assert.Equal(0, Said.By("sheet", "Brindle", "--demo", "--out", file, "--paper", "letter").ExitCode);
        var first = File.ReadAllBytes(file);
        Assert.Equal(3, Said.By("sheet", "Brindle", "--demo", "--out", file).ExitCode);
        Assert.Equal(first, File.ReadAllBytes(file));
        Assert.Equal(0, Said.By("sheet", "Brindle", "--demo", "--out", file, "--overwrite", "--json").ExitCode);
    }

    [Fact]
    public void The_same_record_gives_the_same_bytes_when_asked_to()
    {
        var (one, two) = (Path.Combine(folder, "one.pdf"), Path.Combine(folder, "two.pdf"));
        Said.By("sheet", "Quillon", "--demo", "--out", one, "--reproducible");
        Said.By("sheet", "Quillon", "--demo", "--out", two, "--reproducible");

        Assert.Equal(File.ReadAllBytes(one), File.ReadAllBytes(two));
    }

    [Fact]
    public void Recording_on_a_vehicle_without_that_part_keeps_nothing_and_says_why()
    {
        Said.By("vehicles", "--database", Path.Combine(folder, "shop.db"));
        var said = Said.By("axle", "--turns", "10:20.5", "--wheels", "one-held", "--record", "Bittern", "--database", Path.Combine(folder, "shop.db"));

        Assert.Equal(2, said.ExitCode);
        Assert.StartsWith("--record: The shop has no vehicles yet", said.Errors, StringComparison.Ordinal);
    }
}
