using BuildLog.Gearing.Goals;
using Xunit;

namespace BuildLog.Gearing.Tests.Goals;

public sealed class CruiseGoalTests
{
    // Of 2400 rev/min, in rev/min: 5 % is 120.
    [Theory]
    [InlineData("", 2280, 2520)]
    [InlineData("5 %", 2280, 2520)]
    [InlineData("± 5 %", 2280, 2520)]
    [InlineData("±5%", 2280, 2520)]
    [InlineData("+/- 5 %", 2280, 2520)]
    [InlineData("150", 2250, 2550)]
    [InlineData("150 rpm", 2250, 2550)]
    [InlineData("150 rev/min", 2250, 2550)]
    [InlineData("±150 rev/min", 2250, 2550)]
    [InlineData("-100/+200 rpm", 2300, 2600)]
    [InlineData("-100/+200 rev/min", 2300, 2600)]
    [InlineData("-100 rev/min / +200 rev/min", 2300, 2600)]
    [InlineData("- 100 / + 200", 2300, 2600)]
    [InlineData("-5/+10 %", 2280, 2640)]
    [InlineData("-0/+100 rpm", 2400, 2500)]
    [InlineData("0 %", 2400, 2400)]
    [InlineData("at most", double.NegativeInfinity, 2400)]
    [InlineData("At Most", double.NegativeInfinity, 2400)]
    public void A_tolerance_opens_a_window_about_the_engine_speed(string tolerance, double low, double high)
    {
        var wanted = Read("110 km/h", "2400 rpm", tolerance).Wanted;

        Assert.Equal(low, wanted.Low * 60, 1e-9);
        Assert.Equal(high, wanted.High * 60, 1e-9);
    }

    [Theory]
    [InlineData("110 km/h", "200 rpm", "200 rev/min")]
    [InlineData("110 km/h", "12000 rpm", "12000 rev/min")]
    [InlineData("8 km/h", "2400 rpm", "8 km/h")]
    [InlineData("300 km/h", "2400 rpm", "300 km/h")]
    public void What_hardly_anybody_means_is_taken_and_questioned(string speed, string engine, string named)
        => Assert.StartsWith($"Is {named} meant?", Read(speed, engine, "").Question, StringComparison.Ordinal);

    [Fact]
    public void An_ordinary_cruise_is_not_questioned() => Assert.Null(Read("110 km/h", "2400 rpm", "").Question);

    [Theory]
    [InlineData("100 %")]
    [InlineData("2400 rpm")]
    [InlineData("-5 %")]
    [InlineData("-100")]
    [InlineData("+100/-200 rpm")]
    [InlineData("-100/200 rpm")]
    [InlineData("5 km/h")]
    [InlineData("5 ± 1 %")]
    [InlineData("at least")]
    public void What_is_no_tolerance_is_refused(string tolerance)
        => Assert.NotNull(CruiseGoal.Read("110 km/h", "2400 rpm", tolerance).Refusal);

    [Theory]
    [InlineData("0 km/h", "2400")]
    [InlineData("-110 km/h", "2400")]
    [InlineData("501 km/h", "2400")]
    [InlineData("110", "2400")]
    [InlineData("110 km/h", "0")]
    [InlineData("110 km/h", "20001 rpm")]
    [InlineData("110 km/h", "2400 km/h")]
    public void A_speed_that_nobody_cruises_at_is_refused(string speed, string engineSpeed)
        => Assert.NotNull(CruiseGoal.Read(speed, engineSpeed).Refusal);

    // A ± on the engine speed would be lost: what is allowed is the tolerance.
    [Fact]
    public void An_engine_speed_with_a_plus_minus_is_refused_rather_than_read_without_it()
        => Assert.Equal("uncertainty", CruiseGoal.Read("110 km/h", "2400 ± 50 rpm").Refusal?.Code);

    [Fact]
    public void A_goal_keeps_what_was_typed()
    {
        var goal = Read("70 mph", "2400", "5 %", " 4+OD ");

        Assert.Equal("70 mph", goal.Speed.Text);
        Assert.Equal(70 * 0.44704, goal.Speed.Value, 1e-12);
        Assert.Equal(40, goal.EngineSpeed.Value, 1e-12);
        Assert.Equal("4+OD", goal.Gear);
        Assert.Null(Read("70 mph", "2400").Gear);
    }

    [Fact]
    public void The_tolerance_alone_is_read_like_that_of_the_goal()
    {
        var goal = Read("110 km/h", "2400 rpm", "-100/+200 rpm");

        Assert.Equal(goal.Wanted, CruiseGoal.ReadTolerance("-100/+200 rpm", goal.EngineSpeed).OrRefuse());
    }

    private static CruiseGoal Read(string speed, string engineSpeed, string tolerance = "", string gear = "")
        => CruiseGoal.Read(speed, engineSpeed, tolerance, gear).OrRefuse();
}
