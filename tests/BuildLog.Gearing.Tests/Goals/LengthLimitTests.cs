using BuildLog.Gearing.Goals;
using Xunit;

namespace BuildLog.Gearing.Tests.Goals;

public sealed class LengthLimitTests
{
    [Fact]
    public void Limits_are_typed_as_lengths()
    {
        Assert.Equal(0.7874, LengthLimit.ReadTyreDiameter("31 in").OrRefuse().Most.Value, 1e-9);
        Assert.Equal(0.225, LengthLimit.ReadTyreWidth("225 mm").OrRefuse().Most.Value, 1e-12);
        Assert.Equal(1.45, LengthLimit.ReadTrack("1.45 m").OrRefuse().Most.Value, 1e-12);
    }

    [Theory]
    [InlineData("31")]
    [InlineData("31 mm")]
    [InlineData("31 m")]
    [InlineData("31 in ± 1 in")]
    [InlineData("")]
    public void What_is_no_tyre_diameter_is_refused_with_an_example(string text)
        => Assert.NotEmpty(LengthLimit.ReadTyreDiameter(text).Refusal!.Example);
}
