using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class TwoLimitsTests
{
    private static readonly TwoLimits Limits = new(Window.AtMost(65), Window.AtMost(75));

    [Theory]
    [InlineData(60, 1, true, Verdict.Fits, Because.Inside)]
    [InlineData(65, 1, true, Verdict.Watch, Because.Uncertainty)]
    [InlineData(70, 1, true, Verdict.Watch, Because.UnverifiedLimit)]
    [InlineData(75, 1, true, Verdict.Watch, Because.Uncertainty)]
    [InlineData(80, 1, true, Verdict.Clash, Because.Outside)]
    [InlineData(80, 1, false, Verdict.Watch, Because.UnverifiedLimit)]
    [InlineData(65, 0, true, Verdict.Fits, Because.Inside)]
    [InlineData(75, 0, true, Verdict.Watch, Because.UnverifiedLimit)]
    public void Good_then_advised_against_then_forbidden(double value, double u, bool verified, Verdict verdict, Because because)
        => Assert.Equal((verdict, because), Limits.Judge(InventedCar.Of(value, u), verified));

    [Fact]
    public void The_limit_to_settle_is_the_one_the_interval_reaches_over()
    {
        Assert.Equal(65, Limits.Straddled(InventedCar.Of(65, 1)).High);
        Assert.Equal(75, Limits.Straddled(InventedCar.Of(75, 1)).High);
    }
}
