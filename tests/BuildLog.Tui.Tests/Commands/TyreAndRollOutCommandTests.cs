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
