using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// The chart gives 5.83° at 3000 rev/min and 3.25° at 5000.
/// Source of the limit: 3° and ½°, a shaft maker's manual; the chart, a propshaft shop's page.
/// </remarks>
public sealed class JointAngleCheckTests
{
    [Theory]
    [InlineData(2, 3000, Verdict.Fits)]
    [InlineData(4, 3000, Verdict.Watch)]
    [InlineData(5.9, 3000, Verdict.Clash)]
    [InlineData(4, 5000, Verdict.Clash)]
    [InlineData(0.2, 3000, Verdict.Watch)]
    public void An_angle_at_a_speed(double angle, double redline, Verdict verdict)
        => Assert.All(Find(angle, redline), finding => Assert.Equal(verdict, finding.Verdict));

    // Beyond the chart's 5000 rev/min the last n·β, 16 250, is held: 2.71° at 6000. It may warn there; what 5000 rev/min forbid, 3.25°, is forbidden there too.
    [Theory]
    [InlineData(3, Verdict.Watch, Because.UnverifiedLimit)]
    [InlineData(4, Verdict.Clash, Because.Outside)]
    public void Beyond_the_chart_it_only_warns_of_what_its_last_row_allows(double angle, Verdict verdict, Because because)
        => Assert.All(Find(angle, 6000), finding => Assert.Equal((verdict, because), (finding.Verdict, finding.Because)));

    [Fact]
    public void Each_joint_is_named_with_its_angle_and_what_to_turn()
    {
        var front = Find(4, 3000)[0];

        Assert.Equal("The front joint of the propshaft works at 4.0°; with 3000 rev/min at the redline in 4 it may go to 5.8°, and runs best at 0.5 to 3.0°. Assumed: seen from above, what was not measured lies along the vehicle.", front.Says);
        Assert.Equal(["an angle of 0.5 to 3.0° at the front joint of the propshaft: turn or shim one of its two members by 1.0° or more, and the same at its other joint"], front.Cures);
    }

    // 5.83° at 3000 rev/min is what a single joint may.
    [Theory]
    [InlineData(5, false)]
    [InlineData(8, true)]
    public void An_angle_that_no_single_joint_lasts_at_may_stay_with_a_double_one(double angle, bool named)
        => Assert.All(Find(angle, 3000), finding => Assert.Equal(named, finding.Cures.Any(cure => cure.Contains("a double (constant-velocity) joint in place of the", StringComparison.Ordinal))));

    [Theory]
    [InlineData(1, "front rear")]
    [InlineData(2, "front middle rear")]
    [InlineData(3, "front second third rear")]
    public void The_joints_are_named_from_the_front(int pieces, string names)
    {
        var shaft = new Propshaft("shaft", [.. Enumerable.Repeat(InventedShaft.Piece, pieces)]) { Line = InventedShaft.Line([.. Enumerable.Range(0, pieces + 2).Select(k => k % 2 == 0 ? 3.0 : 7)]) };
        var says = new JointAngleCheck().Look(InventedShaft.Car(3000, shaft), OwnersGoals.None).Select(finding => finding.Says.Split(' ')[1]);

        Assert.Equal(names.Split(' '), says);
    }

    // 0.2° is 0.3 short of half a degree; between, where it runs best, nothing is to be turned.
    [Fact]
    public void A_joint_that_lies_too_straight_is_turned_the_other_way()
        => Assert.EndsWith(": turn or shim one of its two members by 0.3° or more, and the same at its other joint", Assert.Single(Find(0.2, 3000)[0].Cures), StringComparison.Ordinal);

    [Fact]
    public void An_angle_gauge_that_is_too_coarse_is_what_settles_it()
    {
        var line = new[] { InventedShaft.Line(3)[0], new(InventedShaft.Known(InventedCar.Of(5.8 * InventedShaft.Degree, 0.5 * InventedShaft.Degree, "gauge", _ => "read the gauge again"))), InventedShaft.Line(3)[0] };
        var finding = new JointAngleCheck().Look(InventedShaft.Car(3000, InventedShaft.Plain with { Line = line }), OwnersGoals.None).First();

        Assert.Equal((Verdict.Watch, Because.Uncertainty), (finding.Verdict, finding.Because));
        Assert.StartsWith("read the gauge again", finding.SettledBy, StringComparison.Ordinal);
    }

    [Fact]
    public void Angles_that_are_not_measured_are_asked_for()
    {
        var finding = Assert.Single(new JointAngleCheck().Look(InventedShaft.Car(3000, InventedShaft.Plain with { Line = null }), OwnersGoals.None));

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Contains("angle gauge", Assert.Single(finding.Cures), StringComparison.Ordinal);
    }

    private static List<Finding> Find(double angle, double redline)
        => [.. new JointAngleCheck().Look(InventedShaft.Car(redline, InventedShaft.Plain with { Line = InventedShaft.Line(3, 3 + angle, 3) }), OwnersGoals.None)];
}
