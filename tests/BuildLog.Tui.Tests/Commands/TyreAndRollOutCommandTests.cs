using System.Text.Json;

namespace BuildLog.Tui.Tests.Commands;

public sealed class TyreAndRollOutCommandTests
{
    // D = 15 · 25.4 + 2 · 205 · 0.65 = 647.5 mm (UN R30, D = d + 2H); load index 94 = 670 kg (Directive 92/23/EEC, annex II).
    [Fact]
    public void A_size_says_its_dimensions_and_what_it_carries()
    {
        var said = Said.By("tyre", "205/65R15 94H", "--json");

        Assert.Equal(0.6475, said.Number("overallDiameterM"), 12);
        Assert.Equal(670, said.Number("loadCapacityKg"));
        Assert.Equal(210, said.Number("speedLimitKmh"));
        Assert.Equal(0.971 * Math.PI * 0.6475, said.Number("rollingCircumferenceM"), 12);
    }

    [Fact]
    public void Wear_takes_twice_its_depth_off_the_diameter()
        => Assert.Equal(0.6395, Said.By("tyre", "205/65R15 94H", "--worn", "4mm", "--json").Number("overallDiameterM"), 12);

    [Theory]
    [InlineData("205/65R15 94H", "metric", "formula", "UN R30 and R54, D = d + 2H")]
    [InlineData("31x10.50R15LT", "flotation", "formula", "nominal diameter less half an inch (UN R54 annex 5, from memory)")]
    [InlineData("7.50-16LT", "numeric", "table", "UN R54 annex 5, part II, from memory")]
    [InlineData("6.00-16", "numeric", "table", "as 6.00-16LT: UN R54 annex 5, part II, from memory")]
    [InlineData("G78-15", "alpha-numeric", "table", "conversion of load letters to metric sizes, from memory")]
    public void Every_notation_says_where_its_dimensions_come_from(string size, string notation, string from, string source)
    {
        var json = Said.By("tyre", size, "--json").Json;

        Assert.Equal(
            (notation, from, source),
            (json.GetProperty("notation").GetString(), json.GetProperty("dimensionsFrom").GetString(), json.GetProperty("dimensionsSource").GetString()));
        Assert.Contains($"Dimensions by {from}: {source}.", Said.By("tyre", size).Output, StringComparison.Ordinal);
    }

    // 110 and 107 are 1060 and 975 kg (Directive 92/23/EEC, annex II); no aspect ratio is marked.
    [Fact]
    public void What_a_notation_does_not_carry_is_null()
    {
        var json = Said.By("tyre", "7.50R16LT 110/107N", "--json").Json;

        Assert.Equal(JsonValueKind.Null, json.GetProperty("aspectRatio").ValueKind);
        Assert.Equal((1060.0, 975.0), (json.GetProperty("loadCapacityKg").GetDouble(), json.GetProperty("loadCapacityDualKg").GetDouble()));
        Assert.Equal(140, json.GetProperty("speedLimitKmh").GetInt32());
        Assert.Equal((5.5, 6.5), (json.GetProperty("rimWidthIn").GetProperty("low").GetDouble(), json.GetProperty("rimWidthIn").GetProperty("high").GetDouble()));
    }

    // Two exact marks on one line: 2.04 m a turn.
    [Fact]
    public void A_loaded_roll_is_the_rolling_circumference()
    {
        var said = Said.By("rollout", "--roll", "1:2040mm", "--roll", "3:6.12 m", "--loaded", "yes", "--json");

        Assert.Equal(2.04, said.Number("rollingCircumferenceM"), 12);
        Assert.Equal(JsonValueKind.Null, said.Json.GetProperty("loadedFactor").ValueKind);
        Assert.Equal(JsonValueKind.Null, said.Json.GetProperty("freeDiameterM").ValueKind);
    }

    [Fact]
    public void A_loose_wheel_covers_less_ground_once_it_is_loaded()
    {
        var said = Said.By("rollout", "--roll", "5:10.2 m", "--loaded", "no", "--json");

        Assert.Equal(2.04, said.Number("circumferenceM"), 12);
        Assert.Equal(2.04 * 0.971, said.Number("rollingCircumferenceM"), 12);
        Assert.Equal(2.04 / Math.PI, said.Number("freeDiameterM"), 12);
    }
}
