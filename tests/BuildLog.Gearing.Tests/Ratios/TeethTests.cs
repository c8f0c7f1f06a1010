using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

public sealed class TeethTests
{
    [Theory]
    [InlineData("41/10", 4.1)]
    [InlineData("43:9", 43 / 9.0)]
    [InlineData(" 40 / 13 ", 40 / 13.0)]
    public void Teeth_are_ring_then_pinion(string text, double ratio)
    {
        var teeth = Teeth.Read(text).OrRefuse();

        Assert.Equal(ratio, teeth.Ratio, 1e-12);
        Assert.True(teeth.ToMeasured().IsExact);
    }

    [Theory]
    [InlineData("41")]
    [InlineData("41/10/2")]
    [InlineData("41.5/10")]
    [InlineData("-41/10")]
    [InlineData("41/x")]
    [InlineData("99999999999/10")]
    public void What_is_no_pair_of_whole_numbers_is_refused(string text)
    {
        var refusal = Teeth.Read(text).Refusal!;

        Assert.Equal("teeth", refusal.Code);
        Assert.Null(Teeth.Read(refusal.Example).Refusal);
    }

    [Theory]
    [InlineData(3, 2)]
    [InlineData(41, 3)]
    [InlineData(201, 40)]
    [InlineData(0, 0)]
    [InlineData(10, 41)]
    [InlineData(100, 8)]
    public void A_gear_that_no_axle_has_is_refused(int ring, int pinion)
    {
        Assert.Throws<RefusedException>(() => new Teeth(ring, pinion));
        Assert.NotNull(Teeth.Read(FormattableString.Invariant($"{ring}/{pinion}")).Refusal);
    }

    [Fact]
    public void Hunting_teeth_have_no_divisor_in_common()
    {
        Assert.True(new Teeth(41, 10).IsCoprime);
        Assert.False(new Teeth(40, 10).IsCoprime);
    }

    [Fact]
    public void The_common_list_has_each_ratio_once_and_all_within_what_is_searched()
    {
        Assert.Equal(ListedRatios.Common.Count, ListedRatios.Common.Select(teeth => teeth.Ratio).Distinct().Count());
        Assert.All(ListedRatios.Common, teeth => Assert.InRange(teeth.Ratio, 2, 9));
    }

    // The fewest and the most teeth that are taken, each with a partner that makes an axle.
    [Theory]
    [InlineData(40, 4)]
    [InlineData(200, 40)]
    public void The_ends_of_what_a_gear_can_have_belong_to_it(int ring, int pinion) => Assert.Equal((double)ring / pinion, new Teeth(ring, pinion).Ratio);

    [Fact]
    public void Teeth_that_make_no_axle_are_refused_with_the_ratio_they_make()
        => Assert.Contains("12.5", Assert.Throws<RefusedException>(() => new Teeth(100, 8)).Message, StringComparison.Ordinal);
}
