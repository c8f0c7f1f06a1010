using BuildLog.Tui.Bench;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;
using static BuildLog.Tui.Tests.Headless.Steps;

namespace BuildLog.Tui.Tests.Workbench;

/// <summary>Delete is about what is chosen in the pane that has the focus.</summary>
public sealed class DeleteKeyTests : IDisposable
{
    private readonly HeadlessScreen screen = new();
    private readonly SmallShop small = new SmallShop().WithWork();
    private readonly WorkbenchScreen workbench;

    public DeleteKeyTests() => workbench = new(new WorkbenchActs(small.Shop, small.Clock, UnitSystem.Metric), BenchPages.All(small.Shop, small.Clock));

    public void Dispose()
    {
        workbench.Dispose();
        small.Dispose();
        screen.Dispose();
    }

    [Fact]
    public void On_the_page_of_jobs_it_strikes_the_chosen_job_and_z_brings_it_back()
    {
        screen.Run(
            workbench, Press((Key)'6'), See("Rebuild the brake"), Press(Key.Home), Press(Key.Delete), See("Strike what of Rebuild the brake"), Press(Key.Enter), See("Struck: Rebuild the brake cylinders"),
            Check(_ => Assert.Equal(2, small.Shop.Jobs(small.Bittern).Count)), Press((Key)'z'), Press((Key)'q'));
        Assert.Equal(3, small.Shop.Jobs(small.Bittern).Count);
        Assert.Single(small.Shop.Vehicles());
    }

    [Fact]
    public void Where_nothing_can_be_struck_it_says_so_and_leaves_the_vehicle_alone()
    {
        screen.Run(workbench, Press((Key)'4'), Press(Key.Delete), See("Nothing is chosen here that could be struck."), Press((Key)'q'));
        Assert.Single(small.Shop.Vehicles());
    }

    [Fact]
    public void In_the_list_of_vehicles_it_asks_about_the_vehicle()
        => screen.Run(workbench, Press(Key.Delete), See("remove the vehicle Bittern"), Press(Key.Esc), NoLongerSee("remove the vehicle"), Press((Key)'q'));

    [Fact]
    public void On_the_strip_it_is_about_the_part_under_the_cursor()
        => screen.Run(workbench, Press(Key.Tab), Press(Key.Delete), See("Nothing is fitted as engine."), Press((Key)'q'));
}
