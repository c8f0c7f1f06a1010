using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

public sealed class ToothPairsTests
{
    [Fact]
    public void Every_ratio_stands_once()
        => Assert.Equal(ToothPairs.All.Count, ToothPairs.All.Select(pair => (double)pair.Ring / pair.Pinion).Distinct().Count());

    // 7/2 is too few teeth; 28/8 has an unusually small ring; 35/10, 42/12, 49/14, 56/16 have usual numbers. 25/7 is unusual, 50/14 is not. 36/9 is the smallest 4.00 of usual ones but 32/8.
    [Theory]
    [InlineData(3.5, "35/10")]
    [InlineData(25 / 7.0, "50/14")]
    [InlineData(4.0, "32/8")]
    [InlineData(41 / 10.0, "41/10")]
    [InlineData(57 / 20.0, "57/20")]
    public void A_ratio_is_the_likeliest_of_the_pairs_that_make_it(double ratio, string pair)
        => Assert.Equal(pair, ToothPairs.All.Single(each => each.Ratio == ratio).ToString());

    [Fact]
    public void Usual_numbers_come_before_no_common_factor_and_that_before_a_small_pinion()
    {
        List<string> names = [.. ToothPairs.All.Select(pair => pair.ToString())];
        string[] expected = ["31/8", "37/13", "47/16", "32/8", "35/10", "37/7", "57/20"];

        Assert.Equal(expected.OrderBy(names.IndexOf), expected);
        Assert.All(expected, name => Assert.Contains(name, names));
    }
}
