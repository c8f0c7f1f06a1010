using BuildLog.Data.Goals;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests;

public sealed class GoalsAsTyped : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    // By hand: 2400 / 60 = 40 rev/s; −100 and +200 rev/min.
    [Fact]
    public void Are_understood_anew_after_a_restart()
    {
        var vehicle = test.Vehicle("Brindle");
        test.Shop.Add(new CruiseGoalEntry(vehicle) { Speed = "110 kph", EngineSpeed = "2400", Tolerance = "-100/+200 rpm", Gear = "4" });
        test.Shop.Add(new CruiseGoalEntry(vehicle) { Speed = "70 mph", EngineSpeed = "3000 rpm", Tolerance = "at most" });
        test.Reopen();
        Assert.Equal([("110 kph", "2400", "-100/+200 rpm", "4"), ("70 mph", "3000 rpm", "at most", "")], test.Shop.CruiseGoals(vehicle).Select(goal => (goal.Speed, goal.EngineSpeed, goal.Tolerance, goal.Gear)));
        var goals = test.Shop.GoalsOf(vehicle).Cruise;
        Assert.Equal((2300 / 60.0, 2600 / 60.0), (goals[0].Wanted.Low, goals[0].Wanted.High));
        Assert.Equal(70 * 0.44704, goals[1].Speed.Value, 1e-12);
    }

    [Theory]
    [InlineData("110", "2400", "", "'110' has no unit: add km/h, mph, m/s.")]
    [InlineData("110 km/h", "0 rpm", "", "'0 rpm' is no engine speed: more than 0, at most 20 000 rev/min.")]
    [InlineData("110 km/h", "2400", "wide", "'wide' is not a engine speed: reading stopped at 'wide'.")]
    public void That_mean_nothing_are_refused(string speed, string engineSpeed, string tolerance, string sentence)
    {
        var vehicle = test.Vehicle("Brindle");
        var refused = Assert.Throws<RefusedException>(() => test.Shop.Add(new CruiseGoalEntry(vehicle) { Speed = speed, EngineSpeed = engineSpeed, Tolerance = tolerance }));
        Assert.Equal(sentence, refused.Message);
        Assert.Empty(test.Shop.CruiseGoals(vehicle));
    }

    [Fact]
    public void May_be_corrected_and_taken_out()
    {
        var vehicle = test.Vehicle("Brindle");
        var goal = test.Shop.Add(new CruiseGoalEntry(vehicle) { Speed = "110 km/h", EngineSpeed = "2400" });
        goal = test.Shop.Change(goal, g => g.Speed = "90 km/h");
        Assert.Equal(25, test.Shop.GoalsOf(vehicle).Cruise[0].Speed.Value, 1e-12);
        test.Shop.Remove(goal);
        Assert.Empty(test.Shop.CruiseGoals(vehicle));
    }
}
