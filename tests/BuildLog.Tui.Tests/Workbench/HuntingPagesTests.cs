using BuildLog.Tui.Hunting;
using BuildLog.Tui.Tests.Bench;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;
using static BuildLog.Tui.Tests.Headless.Steps;

namespace BuildLog.Tui.Tests.Workbench;

/// <summary>The pages that look for what would work: options, wanted, plans.</summary>
public sealed class HuntingPagesTests
{
    private readonly InventedHunt hunt = new();

    public static TheoryData<int, int> Sizes => new() { { 80, 24 }, { 120, 36 }, { 160, 50 } };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Every_page_looks_like_its_picture(int width, int height)
    {
        using var screen = new HeadlessScreen(width, height);
        using var workbench = Workbench();
        screen.Show(workbench);
        string[] pages = ["options", "wanted", "plans"];
        for (var i = 0; i < pages.Length; i++)
        {
            screen.Press((Key)(char)('1' + i));
            ExpectedScreen.Matches($"{pages[i]}-{width}x{height}", screen.Text);
        }
    }

    [Fact]
    public void The_keys_of_the_options_page_ask_for_the_chosen_way_out()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench();
        screen.Show(workbench).Press((Key)'1').Type("hcplo").Press(Key.CursorDown).Type("h");

        Assert.Equal(["want 1", "card 1", "plan 1", "map", "trade-off", "want 2"], hunt.Asked);
    }

    [Fact]
    public void Marked_ways_out_are_put_beside_each_other_and_at_most_three()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench();
        screen.Show(workbench).Press((Key)'1').Type("b").Type("v").Press(Key.End).Type("v").Type("b");

        Assert.Equal(["beside 1", "beside 1 3"], hunt.Asked);
        Assert.Contains("›  *3     2", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_keys_of_the_wanted_page_know_which_part_and_which_offer()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench();
        screen.Show(workbench).Press((Key)'2').Type("hoicd").Press(Key.CursorDown).Type("d").Press(Key.Enter);

        Assert.Equal(["new", "offer longer axle", "count longer axle", "card longer axle", "close longer axle", "close Hedge 5, row 2", "edit Hedge 5, row 2"], hunt.Asked);
    }

    [Fact]
    public void A_hunt_just_begun_is_the_one_that_is_offered_for()
    {
        hunt.Begins = true;
        using var page = new WantedPage(hunt);
        var (vehicle, view) = (InventedShop.Workbench().Chosen!, new AnsweringView(InventedShop.Workbench()));
        void Press(char key) => page.Acts.Single(act => act.Key == (Key)key).Do(view, vehicle);

        page.Show(vehicle, fromTop: true);
        Press('h');
        page.Show(vehicle, fromTop: false);
        Press('o');

        Assert.Equal(["new", "offer top gear"], hunt.Asked);
    }

    [Fact]
    public void The_keys_of_the_plans_page_try_keep_and_drop()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench();
        screen.Show(workbench).Press((Key)'3').Type("ipdo").Press(Key.Enter);

        Assert.Equal(["try", "keep", "drop", "decide 3.08 on the tall tyres", "try 3.08 on the tall tyres"], hunt.Asked);
    }

    [Fact]
    public void The_status_line_says_how_far_a_search_is_and_Esc_ends_it()
    {
        using var screen = new HeadlessScreen();
        hunt.IsSlow = true;
        using var workbench = Workbench();
        screen.Run(
            workbench,
            Press((Key)'1'),
            _ => Searching(share: 0.4),
            at => at.Draw().Row(22).StartsWith(" Searching … 40 %; Esc ends it.", StringComparison.Ordinal),
            Press(Key.Esc),
            See("The search was ended. i searches again."),
            NoLongerSee("40 %"),
            Press((Key)'q'));
        Assert.True(hunt.Cancel.IsCancellationRequested);
    }

    [Fact]
    public void A_page_without_a_digit_is_reached_by_arrows_and_from_the_list_of_all_acts()
    {
        using var screen = new HeadlessScreen();
        using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench()), [.. InventedShop.Pages(), .. InventedShop.Pages(), .. hunt.Pages()]);
        screen.Show(workbench).Press((Key)'0').Press(Key.CursorRight, Key.CursorRight);
        Assert.Contains("[Wanted]", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.CursorRight, Key.CursorRight, Key.CursorLeft);
        Assert.Contains("[Plans]", screen.Text, StringComparison.Ordinal);
        Assert.Contains(workbench.Keys, act => act.Says == "Go to the page Wanted" && act.KeyName.Length == 0);
    }

    private bool Searching(double share)
    {
        hunt.Progress?.Report(share);
        return hunt.Progress is not null;
    }

    private WorkbenchScreen Workbench() => new(new RecordingActs(InventedShop.Workbench()), hunt.Pages());
}
