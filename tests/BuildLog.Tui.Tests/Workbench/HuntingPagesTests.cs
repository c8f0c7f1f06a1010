using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Tests.Workbench;

/// <summary>The pages that look for what would work: options, wanted, plans.</summary>
public sealed class HuntingPagesTests
{
    private readonly InventedHunt hunt = new();

    public static TheoryData<int, int> Sizes => new() { { 80, 24 }, { 120, 36 } };

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
        screen.Show(workbench).Press((Key)'1').Type("hcpl").Press(Key.CursorDown).Type("h");

        Assert.Equal(["want 2", "card 2", "plan 2", "map", "want 3"], hunt.Asked);
    }

    [Fact]
    public void Marked_ways_out_are_put_beside_each_other_and_at_most_three()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench();
        screen.Show(workbench).Press((Key)'1').Type("b").Type("v").Press(Key.End).Type("v").Type("b");

        Assert.Equal(["beside 2", "beside 1 2"], hunt.Asked);
        Assert.Contains("›*", screen.Text, StringComparison.Ordinal);
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
    public void The_keys_of_the_plans_page_try_keep_and_drop()
    {
        using var screen = new HeadlessScreen();
        using var workbench = Workbench();
        screen.Show(workbench).Press((Key)'3').Type("ipdo").Press(Key.Enter);

        Assert.Equal(["try", "keep", "drop", "decide 3.08 on the tall tyres", "try 3.08 on the tall tyres"], hunt.Asked);
    }

    private WorkbenchScreen Workbench() => new(new RecordingActs(InventedShop.Workbench()), hunt.Pages());
}
