using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
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

    [Fact]
    public void The_ends_of_each_range_belong_to_it()
    {
        Ends(LengthLimit.ReadTyreDiameter, "300 mm", "2.5 m", "299 mm", "2.501 m");
        Ends(LengthLimit.ReadTyreWidth, "80 mm", "800 mm", "79 mm", "801 mm");
        Ends(LengthLimit.ReadTrack, "600 mm", "3 m", "599 mm", "3.001 m");

        static void Ends(Func<string, Parsed<LengthLimit>> read, string low, string high, string tooLow, string tooHigh)
        {
            Assert.All([low, high], text => Assert.Null(read(text).Refusal));
            Assert.All([tooLow, tooHigh], text => Assert.Equal("out-of-range", read(text).Refusal!.Code));
        }
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
