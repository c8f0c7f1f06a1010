using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: geometry: the same side fits, the other clashes.</remarks>
public sealed class StarterCheckTests
{
    [Fact]
    public void The_starter_sits_where_the_bell_housing_is_open()
    {
        var finding = Find(StarterSide.Left, StarterSide.Right);

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.Equal("a bell housing with its starter opening on the left", finding.Cures[0]);
        Assert.Equal(Verdict.Fits, Find(StarterSide.Left, StarterSide.Left).Verdict);
    }

    private static Finding Find(StarterSide engine, StarterSide box)
        => CheckCase.Find(new StarterCheck(), InventedJoint.Of(new() { Starter = engine }, new() { Starter = box }));
}
