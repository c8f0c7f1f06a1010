using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: the owner's goal; what the trade asks for, common practice, no source.</remarks>
public sealed class OverallLowCheckTests
{
    private static readonly Driveline FourByFour = InventedCar.Plain with { TransferCase = new("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)) };

    // 3.5 · 2.5 · 4.10 = 35.875. For 40: low 2.787, axle 4.571, first 3.902.
    [Fact]
    public void The_cures_are_the_parts_ratios()
    {
        var finding = Find(FourByFour, "40");

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.Equal("In gear 1 low the engine turns 35.875 times a wheel turn; wanted 40.00 or more.", finding.Says);
        Assert.Equal(["transfer case low 2.80 or more", "axle ratio 4.58 or more", "first gear 3.91 or more"], finding.Cures);
        Assert.Equal([Position.Transmission, Position.TransferCase, Position.RearAxle], finding.Between);
    }

    // 800 rev/min over 35.875 on 2.00 m: 13.333 · 2/35.875 = 0.7433 m/s.
    [Fact]
    public void The_crawl_is_told_beside_it()
        => Assert.EndsWith(" At idle it crawls at 2.7 km/h.", Find(FourByFour with { Engine = new("four", InventedCar.Exactly(800 / 60.0)) }, "40").Says, StringComparison.Ordinal);

    [Theory]
    [InlineData("30", Verdict.Fits)]
    [InlineData("35.8", Verdict.Watch)]
    public void An_axle_counted_roughly_is_judged_by_its_interval(string wanted, Verdict verdict)
        => Assert.Equal(verdict, Find(FourByFour with { RearAxle = InventedCar.Axle(InventedCar.Of(4.10, 0.05, "count", _ => "count on")) }, wanted).Verdict);

    [Fact]
    public void Without_the_goal_nothing_and_without_the_low_ratio_open()
    {
        Assert.Empty(new OverallLowCheck().Look(FourByFour, CheckCase.NoGoals));
        var open = Find(InventedCar.Plain with { TransferCase = new("case", null, null) }, "40");

        Assert.Equal(Verdict.Open, open.Verdict);
        Assert.Equal("count ten output turns of the transfer case in low", Assert.Single(open.Cures));
    }

    private static Finding Find(Driveline car, string ratio) => Assert.Single(new OverallLowCheck().Look(car, CheckCase.NoGoals with { OverallLow = OverallLowGoal.Read(ratio).OrRefuse() }));
}
