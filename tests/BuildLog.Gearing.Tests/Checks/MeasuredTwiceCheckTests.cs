using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Half-widths 0.02 and 0.02, rectangular: u(d) = 0.02 √2 / √3 = 0.0163, so that numbers more than 0.032 apart cannot both be right.</remarks>
public sealed class MeasuredTwiceCheckTests
{
    [Theory]
    [InlineData(4.03, 0)]
    [InlineData(4.04, 1)]
    [InlineData(3.97, 0)]
    [InlineData(3.96, 1)]
    public void What_can_both_be_right_is_not_spoken_of(double other, int findings) => Assert.Equal(findings, Look(("count of 1 May 2026", other)).Count);

    [Fact]
    public void Measurements_that_exclude_each_other_are_named_with_what_to_do()
    {
        var finding = Assert.Single(Look(("count of 1 May 2026", 4.75), ("count of 2 May 2026", 4.01), ("count of 3 May 2026", 3.35)));

        Assert.Equal(Verdict.Watch, finding.Verdict);
        Assert.Equal([Position.RearAxle], finding.Between);
        Assert.Equal(
            "The ratio of the axle is computed with as 4.00 ± 0.03 (count of 4 May 2026), but was also found to be 4.75 ± 0.03 (count of 1 May 2026), 3.35 ± 0.03 (count of 3 May 2026). They cannot all be right.",
            finding.Says);
        Assert.Equal(["measure it once more, and strike what is wrong from the page Measured"], finding.Cures);
    }

    [Fact]
    public void Where_room_is_left_for_all_that_is_what_is_computed_with()
    {
        var finding = Assert.Single(new MeasuredTwiceCheck().Look(
            InventedCar.Plain with { MeasuredAgain = [new(Position.Tyres, "rolling circumference", Units.Metre, Counted("roll-out B", 2.15), Counted("roll-out A", 2.05)) { RoomForAll = new(Measured.From(2.1, new Input("apart", 0.05, new Evidence("apart"))), Source.Measured) }] },
            OwnersGoals.None));

        Assert.Equal(
            "The rolling circumference of the tyres was found to be 2.15 ± 0.03 m (roll-out B), but also 2.05 ± 0.03 m (roll-out A). They cannot all be right; it is computed with as 2.10 ± 0.10 m, which leaves room for them.",
            finding.Says);
        Assert.Equal(2.1, finding.Value!.Value);
    }

    [Fact]
    public void What_was_measured_once_is_not_spoken_of() => Assert.Empty(new MeasuredTwiceCheck().Look(InventedCar.Plain, OwnersGoals.None));

    private static List<Finding> Look(params (string Says, double Ratio)[] others)
        => [.. new MeasuredTwiceCheck().Look(InventedCar.Plain with { MeasuredAgain = [.. others.Select(other => new MeasuredAgain(Position.RearAxle, "ratio", Units.One, Counted("count of 4 May 2026", 4), Counted(other.Says, other.Ratio)))] }, OwnersGoals.None)];

    private static Known Counted(string says, double ratio) => new(Measured.From(ratio, Input.Rectangular(says, 0.02, new Evidence(says))), Source.Measured, says);
}
