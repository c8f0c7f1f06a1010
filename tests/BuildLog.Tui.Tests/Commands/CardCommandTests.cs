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
}
