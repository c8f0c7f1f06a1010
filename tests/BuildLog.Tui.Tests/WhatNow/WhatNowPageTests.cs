using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Tests.Workbench;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;
using static BuildLog.Tui.Tests.Headless.Steps;

namespace BuildLog.Tui.Tests.WhatNow;

public sealed class WhatNowPageTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 36)]
    [InlineData(160, 50)]
    public void The_first_page_looks_like_its_picture(int width, int height)
    {
        using var screen = new HeadlessScreen(width, height);
        using var workbench = Workbench(out _);
        screen.Run(workbench, See("3 vehicles, 2 need you"), Check(s => ExpectedScreen.Matches($"what-now-{width}x{height}", s.Text)), Press((Key)'q'));
    }

    [Fact]
    public void Enter_opens_the_vehicle_and_w_leads_back()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench(out var acts);
        screen.Run(
            workbench, See("3 vehicles, 2 need you"), Press(Key.CursorDown), Press(Key.Enter), See("Heron estate  being built"),
            Press((Key)'w'), See("What now?"), Press(Key.CursorUp), Press(Key.Enter), See("Drover 4×4  on the road"), Press((Key)'q'));
        Assert.Equal(["choose 2"], acts.Asked); // the first one was on the bench already
    }

    // A look at the shop changes nothing about which vehicle is on the bench.
    [Fact]
    public void Esc_goes_back_to_the_vehicle_that_was_open_wherever_the_cursor_went()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench(out var acts);
        screen.Run(
            workbench, See("3 vehicles, 2 need you"), Press(Key.Esc), See("3 vehicles, 2 need you"), Press(Key.CursorDown), Press(Key.Enter), See("Heron estate  being built"),
            Press((Key)'w'), See("Esc back"), Press(Key.CursorUp), Press(Key.Esc), See("Heron estate  being built"), NoLongerSee("What now?"), Press((Key)'q'));
        Assert.Empty(acts.Asked);
    }

    [Fact]
    public void Typing_after_a_stroke_leaves_the_vehicles_that_hold_the_words()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench(out _);
        screen.Run(
            workbench, See("3 vehicles"), Press((Key)'/'), See("type narrow"), NoLongerSee("n new"), Type("longer"), NoLongerSee("Drover"), See("Heron estate"),
            Press(Key.Esc), See("Drover"), See("n new"), Press((Key)'q'));
    }

    [Fact]
    public void The_stroke_once_more_finds_in_the_whole_shop_and_the_list_of_acts_says_so()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench(out _);
        screen.Run(
            workbench, See("3 vehicles"), Press((Key)'/'), See("/ whole shop"), Press((Key)'/'), See("Find in the whole shop"), Press(Key.Esc), NoLongerSee("Find in the whole"),
            Press((Key)'a'), See("All acts"), Type("find"), See("//      Find words"), Press(Key.Esc), NoLongerSee("All acts"), Press((Key)'q'));
    }

    [Fact]
    public void The_list_can_be_copied_with_every_column()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench(out _);
        screen.Run(workbench, See("3 vehicles"), Press((Key)'x'), See("Copy the table"), Press(Key.Enter), See("clipboard. Where"), Press((Key)'q'));
    }

    [Fact]
    public void F1_says_what_this_page_is()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench(out _);
        screen.Run(workbench, See("3 vehicles"), Press(Key.F1), See("Help: what now"), Press(Key.Esc), NoLongerSee("Help: "), Press((Key)'q'));
    }

    [Fact]
    public void An_act_on_the_first_page_is_about_the_vehicle_under_its_cursor()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench(out var acts);
        screen.Run(workbench, See("3 vehicles"), Press(Key.Home), Press((Key)'g'), See("Drover 4×4  on the road"), Press((Key)'q'));
        Assert.Equal(["choose 2", "goal"], acts.Asked);
    }

    // The cursor used to stay where it was, and what was fitted next went to another vehicle.
    [Fact]
    public void A_vehicle_added_from_here_is_the_one_the_next_act_is_about()
    {
        using var workbench = Workbench(out var acts);
        using var screen = new HeadlessScreen();
        acts.OnNewVehicle = () => workbench.Show(InventedShop.Workbench(3));
        screen.Run(workbench, See("3 vehicles"), Press((Key)'n'), See("Wren coupé  waiting"), Press((Key)'f'), Press((Key)'q'));
        Assert.Equal(["new", "fit anything"], acts.Asked);
    }

    private static WorkbenchScreen Workbench(out RecordingActs acts)
    {
        acts = new RecordingActs(InventedShop.Workbench()) { Rows = InventedShop.WhatNow };
        var workbench = new WorkbenchScreen(acts, InventedShop.Pages());
        workbench.GoToWhatNow();
        return workbench;
    }
}
