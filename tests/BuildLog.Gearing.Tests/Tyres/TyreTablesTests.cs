using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Tyres;

public sealed class TyreTablesTests
{
    // The rule behind the table: 45 · 10^(LI/80) kg, rounded to handy figures.
    [Fact]
    public void Load_indices_follow_their_geometric_series_and_always_rise()
    {
        for (var index = 0; index <= LoadIndex.Highest; index++)
        {
            var kilograms = LoadIndex.CapacityKg(index)!.Value;

            Assert.Equal(1, kilograms / (45 * Math.Pow(10, index / 80.0)), 0.025);
            if (index > 0) Assert.True(kilograms > LoadIndex.CapacityKg(index - 1));
        }
    }

    [Theory]
    [InlineData(0, 45)]
    [InlineData(59, 243)]
    [InlineData(94, 670)]
    [InlineData(200, 14000)]
    public void Spot_values_of_the_load_index(int index, double kilograms) => Assert.Equal(kilograms, LoadIndex.CapacityKg(index));

    [Theory]
    [InlineData(-1)]
    [InlineData(201)]
    public void There_is_no_load_index_below_0_or_above_200(int index) => Assert.Null(LoadIndex.CapacityKg(index));

    [Theory]
    [InlineData("I")]
    [InlineData("O")]
    [InlineData("X")]
    [InlineData("A9")]
    [InlineData("h")]
    [InlineData("")]
    public void Letters_that_are_no_speed_symbol_have_no_limit(string symbol) => Assert.Null(SpeedSymbol.LimitKmh(symbol));

    [Theory]
    [InlineData("A8", false)]
    [InlineData("E", false)]
    [InlineData("F", true)]
    [InlineData("H", true)]
    [InlineData("W", true)]
    [InlineData("Y", true)]
    [InlineData("(Y)", false)]
    [InlineData("X", false)]
    public void Which_symbols_were_read_in_print(string symbol, bool isRead) => Assert.Equal(isRead, SpeedSymbol.IsRead(symbol));

    // H stands out of the alphabet, between U and V.
    [Fact]
    public void H_comes_after_u() => Assert.True(SpeedSymbol.LimitKmh("U") < SpeedSymbol.LimitKmh("H") && SpeedSymbol.LimitKmh("H") < SpeedSymbol.LimitKmh("V"));

    // The example of the command line's reference: 205/65R15 on 5.5 to 7.5 in; from memory.
    [Fact]
    public void A_205_65_sits_on_rims_of_5_and_a_half_to_7_and_a_half()
    {
        var rim = RimWidth.OfMetric(0.205, 0.65);

        Assert.Equal((5.5, 6.0, 7.5), (rim.Low, rim.Measuring, rim.High));
    }
}
