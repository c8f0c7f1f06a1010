using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

public sealed class RatioRangeTests
{
    public static TheoryData<RatioRange> All => [RatioRange.Axle, RatioRange.Gear, RatioRange.Overdrive, RatioRange.Transfer, RatioRange.Hub];

    [Theory]
    [MemberData(nameof(All))]
    public void Its_ends_belong_to_it_and_nothing_beyond(RatioRange range)
    {
        Assert.Equal(range.Low, range.Checked(range.Low));
        Assert.Equal(range.High, range.Checked(range.High));
        Assert.Throws<RefusedException>(() => range.Checked(range.Low * 0.999));
        Assert.Throws<RefusedException>(() => range.Checked(range.High * 1.001));
        Assert.Throws<RefusedException>(() => range.Checked(double.NaN));
        Assert.Null(range.Read(range.Example).Refusal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("47.7")]
    [InlineData("-4.1")]
    [InlineData("1.4")]
    public void An_axle_ratio_is_1_5_to_12(string text)
    {
        var refusal = RatioRange.Axle.Read(text).Refusal!;

        Assert.Contains(text, refusal.Message, StringComparison.Ordinal);
        Assert.Contains("1.5 and 12", refusal.Message, StringComparison.Ordinal);
    }
}
