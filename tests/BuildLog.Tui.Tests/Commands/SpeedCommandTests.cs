namespace BuildLog.Tui.Tests.Commands;

public sealed class SpeedCommandTests
{
    // Common practice, no source: 3000 rev/min, direct top, axle 3.0, 2.19 m a turn: 1000 wheel turns a minute, 131.4 km/h.
    [Fact]
    public void Speed_is_solved_when_it_is_left_out()
    {
        var said = Said.By("speed", "--rpm", "3000", "--gear", "1", "--axle", "3.0", "--circumference", "2.19m", "--json");

        Assert.Equal("speed", said.Json.GetProperty("solvedFor").GetString());
        Assert.Equal(131.4, said.Number("speedKmh"), 9);
        Assert.Equal(1000, said.Number("wheelRpm"), 9);
        Assert.Equal("km/h", said.Json.GetProperty("unit").GetString());
    }

    // Common practice, no source: a tyre 890 mm high, taken at plain π × diameter, rolls 2.80 m and gives about 88 km/h at 2500 rev/min with 4.77.
    [Fact]
    public void A_diameter_is_taken_plain_when_the_loaded_factor_is_one()
    {
        var said = Said.By("speed", "--rpm", "2500", "--gear", "1", "--axle", "4.77", "--diameter", "890mm", "--loaded-factor", "1", "--json");

        Assert.Equal(2.80, said.Number("circumferenceM"), 2);
        Assert.Equal(88, said.Number("speedKmh"), 0);
        Assert.Equal(0, said.Number("standardUncertainty"));
    }

    // Common practice, no source: 120 km/h at 2500 rev/min on a 30 in tyre asks for an axle just under 3 to 1.
    [Fact]
    public void An_axle_is_solved_when_it_is_left_out()
    {
        var said = Said.By("speed", "--rpm", "2500", "--speed", "120 km/h", "--gear", "1", "--diameter", "30 in", "--loaded-factor", "1", "--json");

        Assert.Equal("axle", said.Json.GetProperty("solvedFor").GetString());
        Assert.InRange(said.Number("axleRatio"), 2.95, 3.0);
    }

    // 4.08 ± 0.03 is a 95 % half-width, and speed goes with 1/i: its relative half-width is 0.03/4.08.
    [Fact]
    public void A_typed_uncertainty_reaches_the_result()
    {
        var said = Said.By("speed", "--rpm", "2300", "--gear", "1", "--axle", "4.08±0.03", "--circumference", "2.04m", "--json");
        var speed = said.Number("speedKmh");

        Assert.Equal(speed * (1 - (0.03 / 4.08)), said.Json.GetProperty("interval95").GetProperty("low").GetDouble(), 9);
    }

    [Fact]
    public void Slip_lowers_the_wheels_but_is_not_in_the_overall_ratio()
    {
        var said = Said.By("speed", "--rpm", "3000", "--gear", "1", "--axle", "3", "--circumference", "2m", "--slip", "5%", "--json");

        Assert.Equal(3, said.Number("overallRatio"), 12);
        Assert.Equal(950, said.Number("wheelRpm"), 9);
    }

    // By hand: 800 rev/min at 300 km/h: 83.3 m/s over 13.3 rev/s is 6.25 m an engine turn, and a wheel of 2.09 m would turn three times as fast as the engine.
    [Theory]
    [InlineData("There is no such axle ratio", "--speed", "300km/h", "--rpm", "800", "--gear", "1", "--diameter", "27in")]
    [InlineData("There is no such tyre", "--speed", "110km/h", "--rpm", "200", "--gear", "1", "--axle", "4.08")]
    public void What_nobody_can_buy_is_said_to_be_so(string says, params string[] given) => Assert.Contains(says, Said.By(["speed", .. given]).Output, StringComparison.Ordinal);
}
