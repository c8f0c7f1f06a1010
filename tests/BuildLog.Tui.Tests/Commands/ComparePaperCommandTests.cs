namespace BuildLog.Tui.Tests.Commands;

public sealed class ComparePaperCommandTests
{
    [Fact]
    public void What_is_fitted_stands_first_and_every_figure_has_a_value_for_each()
    {
        var json = Said.By("paper", "compare", "Brindle", "--with", "axle,tyre-up,launch", "--demo", "--json").Json;

        Assert.Equal("as it is", json.GetProperty("names")[0].GetString());
        Assert.Equal(4, json.GetProperty("names").GetArrayLength());
        Assert.All(json.GetProperty("figures").EnumerateArray(), figure => Assert.Equal(4, figure.GetProperty("values").GetArrayLength()));
        Assert.Equal(4, json.GetProperty("counts").GetArrayLength());
    }

    // Brindle wants 2500 rev/min at 100 km/h, 100 either way.
    [Fact]
    public void A_listed_axle_for_the_cruise_meets_the_goal()
    {
        var json = Said.By("paper", "compare", "Brindle", "--with", "axle", "--demo", "--json").Json;
        var cruise = json.GetProperty("figures").EnumerateArray().First(figure => figure.GetProperty("what").GetString()!.StartsWith("engine at", StringComparison.Ordinal)).GetProperty("values");

        Assert.InRange(cruise[1].GetDouble(), 2400, 2600);
        Assert.True(cruise[1].GetDouble() < cruise[0].GetDouble());
    }

    [Fact]
    public void The_table_and_the_map_fit_eighty_columns()
    {
        var lines = Said.By("paper", "compare", "Brindle", "--with", "axle,overdrive", "--map", "--demo").Output.Split('\n');

        Assert.All(lines, line => Assert.True(line.TrimEnd().Length <= 80, line));
        Assert.Contains(lines, line => line.Contains('+', StringComparison.Ordinal) && line.TrimStart().StartsWith('4'));
        Assert.Contains(lines, line => line.Contains("FFF", StringComparison.Ordinal));
    }

    [Fact]
    public void Places_in_the_list_of_options_can_be_compared_on_paper()
    {
        var folder = Directory.CreateTempSubdirectory("buildlog-compare-");
        var file = Path.Combine(folder.FullName, "compared.pdf");
        try
        {
            Assert.Equal(0, Said.By("paper", "compare", "Brindle", "--with", "1,2", "--map", "--out", file, "--demo").ExitCode);
            Assert.Equal("%PDF-", File.ReadAllText(file)[..5]);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Theory]
    [InlineData("bigger", "'bigger' is no change")]
    [InlineData("axle,axle,axle,axle", "2 to 4 options are compared side by side, not 5.")]
    [InlineData("999", "There is no option 999")]
    public void What_cannot_be_compared_is_a_sentence(string typed, string sentence)
    {
        var said = Said.By("paper", "compare", "Brindle", "--with", typed, "--demo");

        Assert.Equal(2, said.ExitCode);
        Assert.Contains(sentence, said.Errors, StringComparison.Ordinal);
    }
}
