using BuildLog.Data.Goals;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Goals;

namespace BuildLog.Tui.Tests.Goals;

public sealed class EngineRangeTests
{
    private readonly CruiseGoalEntry goal = new(new Vehicle { Name = "Bittern" });

    [Theory]
    [InlineData("2400 to 2700", "2550 rpm", "150 rpm")]
    [InlineData("2400-2700 rpm", "2550 rpm", "150 rpm")]
    [InlineData("2400 rpm – 2700 rpm", "2550 rpm", "150 rpm")]
    [InlineData("2400", "2400", "100 rpm")]
    public void An_engine_speed_may_be_told_by_its_two_ends(string typed, string middle, string tolerance)
    {
        GoalForm.For(goal, [], edit => edit(goal)).Save(Typed(typed));

        Assert.Equal((middle, tolerance), (goal.EngineSpeed, goal.Tolerance));
    }

    [Fact]
    public void Of_two_ends_nobody_is_asked_what_is_off_them_too()
    {
        var tolerance = GoalForm.For(goal, [], _ => { }).Entries.Single(entry => entry.Id == "tolerance");

        Assert.False(tolerance.ShownWhen!(Typed("2400 to 2700")));
        Assert.True(tolerance.ShownWhen!(Typed("2400")));
    }

    [Theory]
    [InlineData("2700 to 2400", "the lower end comes first")]
    [InlineData("2400 to 90000", "90000")]
    [InlineData("2400 to many", "")]
    public void What_is_no_range_is_refused_at_the_engine_speed(string typed, string says)
    {
        var engine = GoalForm.For(goal, [], _ => { }).Entries.Single(entry => entry.Id == "engine");

        Assert.Contains(says, engine.Check!(Typed(typed)), StringComparison.Ordinal);
    }

    private static FormValues Typed(string engine)
        => new(new Dictionary<string, string> { ["speed"] = "100 km/h", ["engine"] = engine, ["tolerance"] = "100 rpm", ["gear"] = "top" });
}
