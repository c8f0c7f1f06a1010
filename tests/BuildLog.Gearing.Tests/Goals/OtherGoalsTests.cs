using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Gearing.Tests.Goals;

public sealed class OtherGoalsTests
{
    [Theory]
    [InlineData("6 % at 60 in 4", "6 % at 60 mph in 4")]
    [InlineData("6 % at 100 km/h", "6 % at 100 km/h")]
    [InlineData("6 %", "6 %")]
    public void A_bare_speed_of_a_hill_gets_its_unit(string typed, string meant) => Assert.Equal(meant, HillGoal.WithSpeedIn(typed, Units.MilePerHour));

    [Theory]
    [InlineData("65 at 2400 rpm ± 100 rpm in 4+OD", "65 mph at 2400 rpm ± 100 rpm in 4+OD")]
    [InlineData("65 at most 2400", "65 mph at most 2400")]
    [InlineData("fast at 2400", "fast at 2400")]
    public void A_bare_speed_of_a_cruise_gets_its_unit(string typed, string meant) => Assert.Equal(meant, CruiseGoal.WithSpeedIn(typed, Units.MilePerHour));

    [Fact]
    public void A_hill_has_a_gradient_a_speed_and_perhaps_a_gear()
    {
        var hill = HillGoal.Read("6 %", "100 km/h", " 3 ").OrRefuse();

        Assert.Equal((0.06, 100 / 3.6, "3"), (hill.Gradient.Value, hill.Speed.Value, hill.Gear));
        Assert.Equal(Window.AtLeast(0.06), hill.Wanted);
        Assert.Null(HillGoal.Read("6", "60 mph").OrRefuse().Gear);
    }

    [Fact]
    public void The_others_are_one_number_each_and_want_at_least_that()
    {
        Assert.Equal(Window.AtLeast(0.25), HillStartGoal.Read("25 %").OrRefuse().Wanted);
        Assert.Equal(Window.AtLeast(50), TopSpeedGoal.Read("180 km/h").OrRefuse().Wanted);
        Assert.Equal(Window.AtLeast(40), OverallLowGoal.Read("40").OrRefuse().Wanted);
    }

    [Theory]
    [InlineData("0 %")]
    [InlineData("120 %")]
    [InlineData("-6 %")]
    [InlineData("6 % ± 1 %")]
    [InlineData("steep")]
    [InlineData("")]
    public void What_is_no_hill_is_refused_with_an_example(string text)
    {
        Assert.NotEmpty(HillStartGoal.Read(text).Refusal!.Example);
        Assert.Equal(HillStartGoal.Read(text).Refusal, HillGoal.Read(text, "100 km/h").Refusal);
    }

    [Fact]
    public void The_steepest_hill_and_the_ends_of_an_overall_low_can_be_wanted()
    {
        Assert.Equal(1, HillStartGoal.Read("100 %").OrRefuse().Gradient.Value, 1e-12);
        Assert.Equal(2, OverallLowGoal.Read("2").OrRefuse().Ratio.Value);
        Assert.Equal(1000, OverallLowGoal.Read("1000").OrRefuse().Ratio.Value);
        Assert.Equal(500 / 3.6, TopSpeedGoal.Read("500 km/h").OrRefuse().Speed.Value, 1e-9);
        Assert.NotNull(OverallLowGoal.Read("1.99").Refusal);
        Assert.NotNull(HillStartGoal.Read("100.1 %").Refusal);
    }

    [Theory]
    [InlineData("1.5")]
    [InlineData("1001")]
    [InlineData("40 mph")]
    public void What_is_no_overall_ratio_is_refused(string text) => Assert.NotNull(OverallLowGoal.Read(text).Refusal);

    [Fact]
    public void Six_and_a_half_per_cent_are_shown_as_such()
        => Assert.Equal("6.5 % or more", HillStartGoal.Read("6.5").OrRefuse().Wanted.InWords(Units.PercentUnit));

    [Fact]
    public void Nothing_is_wanted_by_an_owner_without_goals()
    {
        Assert.Empty(OwnersGoals.None.Cruise);
        Assert.Equal((null, null, null, null), (OwnersGoals.None.Hill, OwnersGoals.None.HillStart, OwnersGoals.None.TopSpeed, OwnersGoals.None.OverallLow));
    }
}
