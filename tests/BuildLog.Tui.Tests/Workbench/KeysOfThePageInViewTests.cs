using BuildLog.Tui.Bench;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;
using static BuildLog.Tui.Tests.Headless.Steps;

namespace BuildLog.Tui.Tests.Workbench;

/// <summary>Keys and help of the page in view while the strip or the list of vehicles has the focus.</summary>
public sealed class KeysOfThePageInViewTests
{
    private readonly InventedHunt hunt = new();
    private readonly RecordingActs acts = new(InventedShop.Workbench());

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void A_letter_of_the_page_works_from_every_pane_and_takes_the_cursor_there(int tabs)
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench();
        screen.Show(workbench);
        for (var k = 0; k < tabs; k++) screen.Press(Key.Tab);
        screen.Type("h").Press(Key.CursorDown).Type("c");

        Assert.Equal(["want 1", "card 2"], hunt.Asked);
        Assert.Empty(acts.Asked);
    }

    [Fact]
    public void What_the_strip_knows_itself_stays_with_it()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench();
        screen.Show(workbench).Press((Key)'3');
        workbench.SubViews.OfType<DrivelineStrip>().Single().SetFocus();
        screen.Press(Key.End, Key.Enter, Key.Delete);

        Assert.Equal(["fit tyres", "take off tyres"], acts.Asked);
        Assert.Empty(hunt.Asked);
    }

    [Theory]
    [InlineData('-', "- on this page: Strike the chosen plan.", "strike 3.08 on the tall tyres")]
    [InlineData('\r', "Enter on this page: Try the chosen plan.", "try 3.08 on the tall tyres")]
    public void What_is_about_the_cursor_is_done_only_where_it_is(char pressed, string says, string asked)
    {
        var key = pressed == '\r' ? Key.Enter : (Key)pressed;
        using var screen = new HeadlessScreen();
        using var workbench = Workbench();
        screen.Show(workbench).Press((Key)'3');
        workbench.SubViews.OfType<VehicleList>().Single().SetFocus();

        screen.Press(key);
        Assert.Empty(hunt.Asked);
        Assert.Equal(says, workbench.Messages[0]);

        screen.Press(key);
        Assert.Equal([asked], hunt.Asked);
    }

    [Fact]
    public void What_needs_no_row_leaves_the_cursor_where_it_is()
    {
        using var screen = new HeadlessScreen();
        using var workbench = new WorkbenchScreen(acts, InventedShop.Pages());
        screen.Show(workbench).Press((Key)'2');
        workbench.SubViews.OfType<VehicleList>().Single().SetFocus();

        screen.Type("v");
        Assert.Contains("Force left in each gear", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.CursorDown);
        Assert.Equal(["choose 2"], acts.Asked);
    }

    [Fact]
    public void Where_one_pane_is_seen_at_a_time_a_row_nobody_saw_is_only_shown_the_way_to()
    {
        using var screen = new HeadlessScreen(70, 20);
        using var workbench = Workbench();
        screen.Show(workbench);
        workbench.SubViews.OfType<VehicleList>().Single().SetFocus();

        screen.Type("h");
        Assert.Empty(hunt.Asked);
        Assert.Contains("[1 Options]", screen.Text, StringComparison.Ordinal);
        Assert.Equal("h on this page: Hunt the part of the chosen way out.", workbench.Messages[0]);

        screen.Type("h");
        Assert.Equal(["want 1"], hunt.Asked);
    }

    [Fact]
    public void A_key_that_does_nothing_is_answered_once_and_not_kept()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench();
        screen.Show(workbench).Type("j");
        Assert.Equal(" j does nothing here; a lists all keys.", screen.Row(22));
        Assert.Empty(workbench.Messages);

        screen.Press(Key.CursorRight);
        Assert.Equal("", screen.Row(22));
        screen.Press(Key.Tab, Key.F12);
        Assert.Equal("", screen.Row(22));
    }

    [Fact]
    public void A_key_that_finds_nothing_on_its_page_says_so()
    {
        using var small = new SmallShop();
        using var screen = new HeadlessScreen();
        using var bench = new WorkbenchScreen(new WorkbenchActs(small.Shop, small.Clock, UnitSystem.Metric), BenchPages.All(small.Shop, small.Clock));
        screen.Show(bench).Press((Key)'6').Type("h");
        Assert.Equal(" h: there is nothing on this page to do that with.", screen.Row(22));
    }

    [Fact]
    public void A_wide_screen_names_the_keys_of_the_page_from_the_other_panes_too()
    {
        using var screen = new HeadlessScreen(160, 50);
        using var workbench = Workbench();
        screen.Show(workbench).Press((Key)'3');
        workbench.SubViews.OfType<VehicleList>().Single().SetFocus();
        Assert.Contains("s sheet  i what if  p keep  d drop  h carry out  o decide", screen.Draw().Row(49), StringComparison.Ordinal);
        Assert.DoesNotContain("- strike", screen.Row(49), StringComparison.Ordinal);
    }

    [Fact]
    public void F1_once_more_explains_the_page_in_view_and_back()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench();
        screen.Run(
            workbench, See("Vehicles"), Press(Key.F1), See("Help: the workbench"), See("F1 options"), Press(Key.F1), See("Help: options"), See("F1 the workbench"),
            Press(Key.F1), See("Help: the workbench"), Press(Key.Esc), NoLongerSee("Help: "),
            Press((Key)'2'), Press(Key.F1), See("Help: wanted"), See("F1 the workbench"), Press(Key.Esc), NoLongerSee("Help: "), Press((Key)'q'));
    }

    [Theory]
    [InlineData('f', "Fit what to Bittern?", "Help: parts", "Fit what")]
    [InlineData('g', "What should Bittern do?", "Help: goal", "What should it do")]
    public void F1_in_a_choice_explains_the_choice(char key, string question, string help, string section)
    {
        using var small = new SmallShop();
        using var screen = new HeadlessScreen();
        using var bench = new WorkbenchScreen(new WorkbenchActs(small.Shop, small.Clock, UnitSystem.Metric), BenchPages.All(small.Shop, small.Clock));
        screen.Run(
            bench, Press((Key)key), See(question), Press(Key.F1), See(help), See(section), Press(Key.Esc), NoLongerSee("Help: "),
            See(question), Press(Key.Esc), NoLongerSee(question), Press((Key)'q'));
    }

    private WorkbenchScreen Workbench() => new(acts, hunt.Pages());
}
