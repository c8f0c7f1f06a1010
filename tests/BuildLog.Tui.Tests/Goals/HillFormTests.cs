using BuildLog.Data.Goals;
using BuildLog.Data.Vehicles;
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

    private static FormValues Typed(string gear) => new(new Dictionary<string, string> { ["gradient"] = "6 %", ["speed"] = "90 km/h", ["gear"] = gear });
}
