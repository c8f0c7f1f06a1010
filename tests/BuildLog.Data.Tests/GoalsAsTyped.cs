using BuildLog.Data.Goals;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests;

public sealed class GoalsAsTyped : IDisposable
{
    private static readonly (Limited, string)[] Limits =
    [
        (Limited.HillStart, "25"), (Limited.TopSpeed, "150 km/h"), (Limited.OverallLow, "40"),
        (Limited.TyreDiameter, "31 in"), (Limited.TyreWidth, "225 mm"), (Limited.Track, "1450 mm"),
    ];

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
        Assert.Equal([("110 kph", "2400", "-100/+200 rpm", "4"), ("70 mph", "3000 rpm", "at most", "")], test.Shop.Goals(vehicle).OfType<CruiseGoalEntry>().Select(goal => (goal.Speed, goal.EngineSpeed, goal.Tolerance, goal.Gear)));
        var goals = test.Shop.GoalsOf(vehicle).Cruise;
        Assert.Equal((2300 / 60.0, 2600 / 60.0), (goals[0].Wanted.Low, goals[0].Wanted.High));
        Assert.Equal(70 * 0.44704, goals[1].Speed.Value, 1e-12);
    }

    [Theory]
    [InlineData("110", "2400", "", "'110' has no unit: add km/h, mph, m/s.")]
    [InlineData("110 km/h", "0 rpm", "", "'0 rpm' is no engine speed: at least 50, at most 20 000 rev/min.")]
    [InlineData("110 km/h", "2400", "wide", "'wide' is not an engine speed: reading stopped at 'wide'.")]
    public void That_mean_nothing_are_refused(string speed, string engineSpeed, string tolerance, string sentence)
    {
        var vehicle = test.Vehicle("Brindle");
        var refused = Assert.Throws<RefusedException>(() => test.Shop.Add(new CruiseGoalEntry(vehicle) { Speed = speed, EngineSpeed = engineSpeed, Tolerance = tolerance }));
        Assert.Equal(sentence, refused.Message);
        Assert.Empty(test.Shop.Goals(vehicle).OfType<CruiseGoalEntry>());
    }

    // By hand: 100 / 3.6 m/s; 31 in · 0.0254.
    [Fact]
    public void Of_every_kind_are_understood_anew_after_a_restart()
    {
        var vehicle = test.Vehicle("Brindle");
        test.Shop.Add(new HillGoalEntry(vehicle) { Gradient = "6 %", Speed = "100 km/h", Gear = "4" });
        foreach (var (limited, limit) in Limits) test.Shop.Add(new LimitGoalEntry(vehicle, limited) { Limit = limit });
        test.Reopen();
        var goals = test.Shop.GoalsOf(vehicle);
        Assert.Empty(goals.Cruise);
        Assert.Equal((0.06, 100 / 3.6, "4"), (goals.Hill!.Gradient.Value, goals.Hill.Speed.Value, goals.Hill.Gear));
        Assert.Equal(0.25, goals.HillStart!.Gradient.Value, 1e-12);
        Assert.Equal(150 / 3.6, goals.TopSpeed!.Speed.Value, 1e-12);
        Assert.Equal(40, goals.OverallLow!.Ratio.Value);
        Assert.Equal(31 * 0.0254, goals.TyreDiameter!.Most.Value, 1e-12);
        Assert.Equal(0.225, goals.TyreWidth!.Most.Value, 1e-12);
        Assert.Equal(1.45, goals.Track!.Most.Value, 1e-12);
        Assert.Equal(Limits, test.Shop.Goals(vehicle).OfType<LimitGoalEntry>().Select(goal => (goal.Limited, goal.Limit)));
    }

    [Theory]
    [InlineData(Limited.HillStart, "150 %", "'150 %' is no hill to want: more than 0, at most 100 %.")]
    [InlineData(Limited.TopSpeed, "900 km/h", "'900 km/h' is no road speed to cruise at: more than 0, at most 500 km/h.")]
    [InlineData(Limited.OverallLow, "1", "'1' is no overall low ratio: it lies between 2 and 1000.")]
    [InlineData(Limited.TyreDiameter, "31 mm", "'31 mm' is no tyre diameter: 300 to 2500 mm.")]
    [InlineData(Limited.Track, "7 m", "'7 m' is no track: 600 to 3000 mm.")]
    public void Beyond_all_reason_are_refused(Limited limited, string limit, string sentence)
    {
        var vehicle = test.Vehicle("Brindle");
        var refused = Assert.Throws<RefusedException>(() => test.Shop.Add(new LimitGoalEntry(vehicle, limited) { Limit = limit }));
        Assert.Equal(sentence, refused.Message);
        Assert.Empty(test.Shop.Goals(vehicle));
    }

    [Fact]
    public void Stand_once_where_only_one_can()
    {
        var vehicle = test.Vehicle("Brindle");
        test.Shop.Add(new LimitGoalEntry(vehicle, Limited.TopSpeed) { Limit = "150 km/h" });
        test.Shop.Add(new HillGoalEntry(vehicle) { Gradient = "6 %", Speed = "100 km/h" });
        test.Shop.Add(new LimitGoalEntry(test.Vehicle("Tansy"), Limited.TopSpeed) { Limit = "140 km/h" });
        var refused = Assert.Throws<RefusedException>(() => test.Shop.Add(new LimitGoalEntry(vehicle, Limited.TopSpeed) { Limit = "160 km/h" }));
        Assert.Equal("The vehicle already has a top speed goal (150 km/h): change that one, or take it out first.", refused.Message);
        Assert.Throws<RefusedException>(() => test.Shop.Add(new HillGoalEntry(vehicle) { Gradient = "8 %", Speed = "60 km/h" }));
    }

    [Fact]
    public void May_be_corrected_and_taken_out()
    {
        var vehicle = test.Vehicle("Brindle");
        var goal = test.Shop.Add(new CruiseGoalEntry(vehicle) { Speed = "110 km/h", EngineSpeed = "2400" });
        goal = test.Shop.Change(goal, g => g.Speed = "90 km/h");
        Assert.Equal(25, test.Shop.GoalsOf(vehicle).Cruise[0].Speed.Value, 1e-12);
        test.Shop.Remove(goal);
        Assert.Empty(test.Shop.Goals(vehicle).OfType<CruiseGoalEntry>());
    }
}
