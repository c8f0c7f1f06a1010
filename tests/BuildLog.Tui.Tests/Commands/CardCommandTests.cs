namespace BuildLog.Tui.Tests.Commands;

public sealed class CardCommandTests
{
    [Fact]
    public void The_fields_are_the_ones_other_programs_ask_for()
    {
        var json = Said.By("card", "Brindle", "--demo", "--json").Json;
        Assert.Equal("axle", json.GetProperty("wanted").GetString());
        Assert.Equal(10, json.GetProperty("perWheelTurns").GetInt32());
        var (low, high) = (json.GetProperty("window").GetProperty("low").GetDouble(), json.GetProperty("window").GetProperty("high").GetDouble());
        Assert.Equal(5 * low, json.GetProperty("oneHeld").GetProperty("low").GetDouble(), 1e-9);
        Assert.Equal(10 * high, json.GetProperty("together").GetProperty("high").GetDouble(), 1e-9);
        Assert.Contains("37/11", json.GetProperty("teeth").EnumerateArray().Select(teeth => teeth.GetString()));
    }

    [Fact]
    public void Text_fits_forty_columns_and_says_yes_and_no()
    {
        var lines = Said.By("card", "Brindle", "--demo").Output.Split('\n');
        Assert.All(lines, line => Assert.True(line.TrimEnd().Length <= 40, line));
        Assert.Contains(lines, line => line.StartsWith("  yes      ", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith("  no       under ", StringComparison.Ordinal));
    }

    // Yes lies inside no: whatever is a sure yes is no sure no.
    [Theory]
    [InlineData("axle", "oneHeld")]
    [InlineData("gearbox", "input")]
    [InlineData("tyres", "looseM")]
    public void Every_card_has_a_yes_inside_its_no(string part, string way)
    {
        var json = Said.By("card", "Brindle", "--part", part, "--demo", "--json").Json;

        Assert.Equal(part, json.GetProperty("wanted").GetString());
        var no = json.GetProperty($"{way}No");
        Assert.True(no.GetProperty("below").GetDouble() < no.GetProperty("above").GetDouble());
        if (json.GetProperty($"{way}Yes") is { ValueKind: System.Text.Json.JsonValueKind.Object } yes)
        {
            Assert.True(no.GetProperty("below").GetDouble() < yes.GetProperty("low").GetDouble());
            Assert.True(yes.GetProperty("high").GetDouble() < no.GetProperty("above").GetDouble());
        }
    }

    [Theory]
    [InlineData("gearbox")]
    [InlineData("tyres")]
    public void Every_card_fits_forty_columns(string part)
        => Assert.All(Said.By("card", "Brindle", "--part", part, "--demo").Output.Split('\n'), line => Assert.True(line.TrimEnd().Length <= 40, line));

    [Theory]
    [InlineData("a6")]
    [InlineData("half-letter")]
    public void It_is_one_page_for_the_pocket(string paper)
    {
        var folder = Directory.CreateTempSubdirectory("buildlog-card-");
        try
        {
            foreach (var part in (string[])["axle", "gearbox", "tyres"])
            {
                var said = Said.By("card", "Brindle", "--part", part, "--paper", paper, "--out", Path.Combine(folder.FullName, $"{part}.pdf"), "--demo");
                Assert.Contains("one page", said.Output, StringComparison.Ordinal);
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Theory]
    [InlineData("--part", "engine", "There is no card for 'engine': axle, gearbox, overdrive, tyres.")]
    [InlineData("--paper", "a4", "'a4' is no paper: a6 or half-letter.")]
    public void What_there_is_no_card_for_is_a_sentence(string option, string typed, string sentence)
        => Assert.Contains(sentence, Said.By("card", "Brindle", option, typed, "--demo").Errors, StringComparison.Ordinal);
}
