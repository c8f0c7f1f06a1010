using BuildLog.Data.Goals;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Goals;

namespace BuildLog.Tui.Tests.Goals;

public sealed class HillFormTests
{
    private readonly HillGoalEntry goal = new(new Vehicle { Name = "Bittern" });

    [Fact]
    public void A_hill_is_held_in_a_gear_that_is_there()
    {
        var form = HillForm.For(goal, ["1", "2", "3"], edit => edit(goal));

        Assert.Equal(["top", "1", "2", "3"], Assert.IsType<ChoiceEntry>(form.Entries[^1]).Options.Select(option => option.Value));
        form.Save(Typed("3"));
        Assert.Equal("3", goal.Gear);
        form.Save(Typed("top"));
        Assert.Empty(goal.Gear);
    }

    [Fact]
    public void Its_gear_stays_although_the_gearbox_that_had_it_is_out()
    {
        goal.Gear = "5";

        var gear = Assert.IsType<ChoiceEntry>(HillForm.For(goal, ["1", "2", "3"], edit => edit(goal)).Entries[^1]);
        Assert.Equal("5", gear.Initial);
        Assert.Contains(gear.Options, option => option.Value == "5");
    }

    [Theory]
    [InlineData("90", false, "90 km/h", "= 90 km/h = 55.92 mph")]
    [InlineData("60", true, "60 mph", "= 60 mph = 96.56 km/h")]
    [InlineData("90 km/h", true, "90 km/h", "= 55.92 mph")]
    public void A_bare_speed_is_in_the_units_shown_and_kept_with_its_unit(string typed, bool isImperial, string kept, string echo)
    {
        var form = HillForm.For(goal, [], edit => edit(goal), isImperial ? UnitSystem.Imperial : UnitSystem.Metric);
        var values = new FormValues(new Dictionary<string, string> { ["gradient"] = "6 %", ["speed"] = typed, ["gear"] = "top" });

        var speed = form.Entries.Single(entry => entry.Id == "speed");
        Assert.Null(speed.Check!(values));
        Assert.Equal(echo, speed.Echo!(values));
        form.Save(values);
        Assert.Equal(kept, goal.Speed);
    }

    private static FormValues Typed(string gear) => new(new Dictionary<string, string> { ["gradient"] = "6 %", ["speed"] = "90 km/h", ["gear"] = gear });
}
