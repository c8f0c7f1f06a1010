using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Propshafts;

public sealed class JointAngleChartTests
{
    private const double Degree = InventedShaft.Degree;

    // By hand between 3000 (17 490) and 3500 (17 500): 17 495 / 3250 = 5.3831°.
    [Fact]
    public void Between_two_rows_speed_times_angle_is_on_the_straight_line()
        => Assert.Equal(5.3831, JointAngleChart.Limit(3250 / 60.0).Value / Degree, 1e-4);

    [Fact]
    public void Below_the_first_row_the_joint_may_go_no_further()
        => Assert.Equal(11.5, JointAngleChart.Limit(10).Value / Degree, 1e-12);

    // 16 250 / 6000.
    [Fact]
    public void Beyond_the_last_row_the_product_is_held_and_it_says_so()
    {
        Assert.Equal(2.7083, JointAngleChart.Limit(100).Value / Degree, 1e-4);
        Assert.False(JointAngleChart.Covers(100));
        Assert.True(JointAngleChart.Covers(5000 / 60.0));
    }

    [Fact]
    public void A_faster_shaft_never_gets_a_larger_angle()
        => Gen.Select(Gen.Double[500, 7000], Gen.Double[0, 500]).Sample((rpm, more)
            => Assert.True(JointAngleChart.Limit((rpm + more) / 60).Value <= JointAngleChart.Limit(rpm / 60).Value + 1e-12));

    // β²ω² at each row is 882 to 1023 rad/s²; 7° at 2500 rev/min is 1023 (worked example E5).
    [Fact]
    public void Over_the_whole_chart_it_is_a_limit_of_about_1000_rad_per_second_squared()
    {
        Assert.Equal(1023.03, Shake(2500, 7 * Degree), 0.01);
        Gen.Double[1500, 5000].Sample(rpm => Assert.InRange(Shake(rpm, JointAngleChart.Limit(rpm / 60).Value), 880, 1025));
    }

    // A catalogue's n·β by joint size, n_max rev/min and degrees · rev/min, for shafts of 1.5 m; read. The chart stays within it for all but the two largest.
    [Theory]
    [InlineData(6000, 27000)]
    [InlineData(6000, 26000)]
    [InlineData(6000, 24000)]
    [InlineData(6000, 22000)]
    [InlineData(5600, 21000)]
    [InlineData(5000, 20000)]
    [InlineData(4700, 19000)]
    [InlineData(4500, 18000)]
    public void It_asks_for_no_more_than_a_catalogue_of_commercial_joints_allows(double most, double product)
        => Gen.Double[1500, most].Sample(rpm => Assert.True(rpm * JointAngleChart.Limit(rpm / 60).Value / Degree <= product));

    // Second route: the slope by a small difference.
    [Fact]
    public void The_uncertainty_of_the_speed_comes_through()
        => Gen.Double[1501, 5999].Where(rpm => Math.Abs((rpm % 500) - 250) < 240).Sample(rpm =>
        {
            var slope = (JointAngleChart.Limit((rpm + 0.01) / 60).Value - JointAngleChart.Limit((rpm - 0.01) / 60).Value) / 0.02;

            Assert.Equal(Math.Abs(slope), JointAngleChart.Limit(InventedCar.Of(rpm / 60, 1 / 60.0)).StandardUncertainty, 1e-9);
        });

    private static double Shake(double rpm, double angle) => TorsionalAcceleration.Of(angle * angle, rpm / 60).Value;
}
