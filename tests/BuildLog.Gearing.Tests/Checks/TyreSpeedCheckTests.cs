using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>S is 180 km/h. The rule 1.01 v + 6.5 asks for 180 at 171.8 km/h.</remarks>
public sealed class TyreSpeedCheckTests
{
    [Theory]
    [InlineData("170 km/h", Verdict.Fits)]
    [InlineData("175 km/h", Verdict.Watch)]
    [InlineData("185 km/h", Verdict.Clash)]
    public void The_symbol_against_the_top_speed(string top, Verdict verdict) => Assert.Equal(verdict, Find("205/65R15 94S", top).Verdict);

    // 1.01 · 185 + 6.5 = 193.4: U (200).
    [Fact]
    public void The_symbol_that_would_do_is_named()
        => Assert.Equal(["tyres of speed symbol U or faster", "a top speed of 171 km/h or less"], Find("205/65R15 94S", "185 km/h").Cures);

    [Fact]
    public void A_cruise_goal_alone_is_enough_to_judge_by()
        => Assert.Equal(Verdict.Clash, Assert.Single(new TyreSpeedCheck().Look(Car("175/80R14 88F"), new([InventedCar.Goal("110 km/h", "2400")]))).Verdict);

    [Fact]
    public void A_symbol_that_was_not_read_is_asked_for_with_what_would_do()
        => Assert.Contains("Q or faster would do", Assert.Single(Find("205/65R15", "145 km/h").Cures), StringComparison.Ordinal);

    [Fact]
    public void Without_a_speed_there_is_nothing_to_judge_by() => Assert.Empty(new TyreSpeedCheck().Look(Car("205/65R15 94S"), OwnersGoals.None));

    private static Driveline Car(string size) => InventedCar.Plain with { Tyres = new("tyres", null, TyreSizeText.Read(size).OrRefuse()) };

    private static Finding Find(string size, string top)
        => Assert.Single(new TyreSpeedCheck().Look(Car(size), OwnersGoals.None with { TopSpeed = TopSpeedGoal.Read(top).OrRefuse() }));
}
