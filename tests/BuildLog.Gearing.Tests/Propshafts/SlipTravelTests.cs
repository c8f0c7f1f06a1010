using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.Measurements;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Propshafts;

public sealed class SlipTravelTests
{
    private const double Degree = InventedShaft.Degree;

    // Worked examples E11 and E12: 1200 mm at 6°, 100 mm of droop, 80 mm of bump.
    [Fact]
    public void A_shaft_of_1200_mm_at_six_degrees()
    {
        var travel = SlipTravel.Of(1.2, 6 * Degree, 0.1, 0.08);

        Assert.Equal(14.5315, travel.Out.Value * 1000, 1e-4);
        Assert.Equal(5.70919, travel.In.Value * 1000, 1e-5);
    }

    // With 125 mm of drop at ride height, bump beyond that passes the level, where the shaft is shortest: 1200 (1 − cos 6°) = 6.574 mm.
    [Fact]
    public void Past_the_level_it_grows_again()
        => Assert.Equal(1200 * (1 - Math.Cos(6 * Degree)), SlipTravel.Of(1.2, 6 * Degree, 0.1, 0.2).In.Value * 1000, 1e-9);

    // Second route: walk through the travel in small steps.
    [Fact]
    public void It_is_the_longest_and_the_shortest_on_the_way()
        => Gen.Select(Gen.Double[0.3, 2], Gen.Double[-15, 15], Gen.Double[0, 0.3], Gen.Double[0, 0.3]).Sample((length, slope, droop, bump) =>
        {
            var travel = SlipTravel.Of(length, slope * Degree, droop, bump);
            var lengths = Enumerable.Range(0, 4001).Select(k => -bump + ((droop + bump) * k / 4000)).Select(z
                => Math.Sqrt(Math.Pow(length * Math.Cos(slope * Degree), 2) + Math.Pow((length * Math.Sin(slope * Degree)) + z, 2))).ToList();

            Assert.Equal(lengths.Max() - length, travel.Out.Value, 1e-8);
            Assert.Equal(length - lengths.Min(), travel.In.Value, 1e-8);
        }, iter: 100);

    // E11 and E12 together; at both stops, past the level and short of it.
    [Fact]
    public void Out_and_in_are_the_whole_travel() => Assert.Equal(14.5315 + 5.70919, SlipTravel.Of(1.2, 6 * Degree, 0.1, 0.08).Total.Value * 1000, 2e-4);

    [Theory]
    [InlineData(6, 0.1, 0.08)]
    [InlineData(6, 0.1, 0.2)]
    [InlineData(-6, 0.05, 0.08)]
    public void It_moves_with_its_measures_as_small_differences_say(double slope, double droop, double bump)
    {
        foreach (var part in (Func<SlipTravel, Measured>[])[travel => travel.Out, travel => travel.In])
        {
            SmallDifferences.Agree(x => part(SlipTravel.Of(x, slope * Degree, droop, bump)), 1.2);
            SmallDifferences.Agree(x => part(SlipTravel.Of(1.2, x, droop, bump)), slope * Degree);
            SmallDifferences.Agree(x => part(SlipTravel.Of(1.2, slope * Degree, x, bump)), droop);
            SmallDifferences.Agree(x => part(SlipTravel.Of(1.2, slope * Degree, droop, x)), bump);
        }
    }

    [Fact]
    public void Without_travel_nothing_slips()
    {
        var still = SlipTravel.Of(1.2, 6 * Degree, 0, 0);

        Assert.Equal(0, still.Total.Value, 1e-12);
    }
}
