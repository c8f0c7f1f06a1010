using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
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

    // A bare number is rev/min, and 9 of 2400 are 0.4 %.
    [Theory]
    [InlineData("9", "Is ± 9 rev/min meant? Hardly a rev counter is read so closely; else write 9 % or 90 rev/min.")]
    [InlineData("0 %", "Is ± 0 rev/min meant? Hardly a rev counter is read so closely; else write 5 %.")]
    [InlineData("9 %", null)]
    [InlineData("90", null)]
    [InlineData("-0/+100 rpm", null)]
    [InlineData("at most", null)]
    public void A_tolerance_below_what_a_rev_counter_shows_is_questioned(string tolerance, string? asks) => Assert.Equal(asks, Read("110 km/h", "2400 rpm", tolerance).Question);

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

    [Theory]
    [InlineData("500 km/h", "20000 rpm")]
    [InlineData("1 km/h", "50 rpm")]
    public void The_ends_of_both_ranges_can_be_cruised_at(string speed, string engineSpeed) => Assert.Null(CruiseGoal.Read(speed, engineSpeed).Refusal);

    // A decimal point for the thousands: 2.300 is no engine speed, nor is 49.
    [Theory]
    [InlineData("2.300")]
    [InlineData("49 rpm")]
    public void An_engine_does_not_turn_so_slowly(string engineSpeed) => Assert.Equal("out-of-range", CruiseGoal.ReadEngineSpeed(engineSpeed).Refusal?.Code);

    [Theory]
    [InlineData("110 km/h at 2400 rpm", null)]
    [InlineData("110 km/h", "cruise")]
    [InlineData("110 km/h at 2400 rpm at 3", "cruise")]
    [InlineData("110 at 2400", "no-unit")]
    public void Both_are_read_in_one_line(string text, string? code) => Assert.Equal(code, CruiseGoal.ReadLine(text).Refusal?.Code);

    // 2400 rev/min are 40 a second; 5 % of it 2, 150 rev/min 2.5.
    [Theory]
    [InlineData("110 km/h at 2400 rpm", 38, 42, null)]
    [InlineData("110 km/h at 2400 rpm ± 150 rpm in 4", 37.5, 42.5, "4")]
    [InlineData("110 km/h at 2400 rpm +/- 150 rpm", 37.5, 42.5, null)]
    [InlineData("110 km/h at 2400 rpm -120/+240 rpm in 4+OD", 38, 44, "4+OD")]
    [InlineData("110 km/h at most 2400 rpm", double.NegativeInfinity, 40, null)]
    public void A_line_says_tolerance_and_gear_too(string text, double low, double high, string? gear)
    {
        var goal = CruiseGoal.ReadLine(text).OrRefuse();

        Assert.Equal((Math.Round(low, 9), Math.Round(high, 9), gear), (Math.Round(goal.Wanted.Low, 9), Math.Round(goal.Wanted.High, 9), goal.Gear));
    }

    // −120/+240 of 2400 are −5 and +10 %: of 45 a second −2.25 and +4.5.
    [Fact]
    public void A_line_leaves_what_it_does_not_say_as_it_was()
    {
        var was = CruiseGoal.Read("100 km/h", "2400 rpm", "-120/+240 rpm", "3").OrRefuse();

        var goal = CruiseGoal.ReadLine("110 km/h at 2700 rpm", was).OrRefuse();

        Assert.Equal((42.75, 49.5, "3"), (Math.Round(goal.Wanted.Low, 9), Math.Round(goal.Wanted.High, 9), goal.Gear));
        Assert.Equal("3", HillGoal.ReadLine("8 % at 90 km/h", HillGoal.Read("6 %", "80 km/h", "3").OrRefuse()).OrRefuse().Gear);
        Assert.Equal((0.08, 25.0, "4"), HillGoal.ReadLine("8 % at 90 km/h in 4").OrRefuse() is var hill ? (hill.Gradient.Value, Math.Round(hill.Speed.Value, 9), hill.Gear) : default);
        Assert.Equal("hill", HillGoal.ReadLine("8 %").Refusal!.Code);
    }

    // A window that only one engine speed is in wants that one; the goal's own is always in it.
    [Fact]
    public void A_window_of_one_engine_speed_is_a_wish_and_an_empty_one_is_none()
    {
        var goal = Read("110 km/h", "2400 rpm");

        Assert.Equal(new Window(40, 40), (goal with { Wanted = new(40, 40) }).Wanted);
        Assert.Equal("tolerance", Assert.Throws<RefusedException>(() => new CruiseGoal(goal.Speed, goal.EngineSpeed, new(41, 40), null)).Refusal.Code);
    }

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
