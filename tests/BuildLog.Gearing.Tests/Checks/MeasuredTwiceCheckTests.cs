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
    public void What_was_measured_once_is_not_spoken_of() => Assert.Empty(new MeasuredTwiceCheck().Look(InventedCar.Plain, OwnersGoals.None));

    private static List<Finding> Look(params (string Says, double Ratio)[] others)
        => [.. new MeasuredTwiceCheck().Look(InventedCar.Plain with { MeasuredAgain = [.. others.Select(other => new MeasuredAgain(Position.RearAxle, "ratio", Units.One, Counted("count of 4 May 2026", 4), Counted(other.Says, other.Ratio)))] }, OwnersGoals.None)];

    private static Known Counted(string says, double ratio) => new(Measured.From(ratio, Input.Rectangular(says, 0.02, new Evidence(says))), Source.Measured, says);
}
