using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Tests.Workbench;

public sealed class WorkbenchPictureTests
{
    public static TheoryData<int, int> Sizes => new() { { 80, 24 }, { 120, 36 }, { 160, 50 } };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Every_page_looks_like_its_picture(int width, int height)
    {
        using var screen = new HeadlessScreen(width, height);
        using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench()), InventedShop.Pages());
        screen.Show(workbench);
        string[] pages = ["findings", "speeds", "measured", "goal", "history"];
        for (var i = 0; i < pages.Length; i++)
        {
            screen.Press((Key)(char)('1' + i));
            ExpectedScreen.Matches($"{pages[i]}-{width}x{height}", screen.Text);
        }
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void A_four_by_four_shows_both_axles(int width, int height)
    {
        using var screen = new HeadlessScreen(width, height);
        using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench(2)), InventedShop.Pages());
        screen.Show(workbench);
        Assert.Contains("front axle", screen.Text, StringComparison.Ordinal);
        Assert.Contains("rear axle", screen.Text, StringComparison.Ordinal);
        ExpectedScreen.Matches($"four-by-four-{width}x{height}", screen.Text);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void An_empty_position_looks_like_its_picture(int width, int height)
    {
        using var screen = new HeadlessScreen(width, height);
        using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench(3)), InventedShop.Pages());
        ExpectedScreen.Matches($"half-known-{width}x{height}", screen.Show(workbench).Text);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void An_empty_shop_says_what_to_do_first(int width, int height)
    {
        using var screen = new HeadlessScreen(width, height);
        using var workbench = new WorkbenchScreen(new RecordingActs(WorkbenchModel.EmptyShop), InventedShop.Pages());
        ExpectedScreen.Matches($"empty-shop-{width}x{height}", screen.Show(workbench).Text);
    }

    // Where there is no room for it, Space shows it.
    [Theory]
    [InlineData(120, 36, false)]
    [InlineData(160, 50, true)]
    public void The_strip_of_a_large_screen_shows_the_card_of_its_part_below(int width, int height, bool hasRoom)
    {
        using var screen = new HeadlessScreen(width, height);
        using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench()), InventedShop.Pages());
        screen.Show(workbench).Press(Key.Tab, Key.CursorRight, Key.CursorRight);
        Assert.Equal(hasRoom, screen.Text.Contains("Counted 3 May 2026, one wheel held", StringComparison.Ordinal));
        if (hasRoom) ExpectedScreen.Matches($"strip-{width}x{height}", screen.Text);

        screen.Press(Key.Tab);
        Assert.DoesNotContain("Counted 3 May 2026, one wheel held", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_resize_draws_what_a_fresh_start_at_that_size_draws()
    {
        using var screen = new HeadlessScreen(80, 24);
        using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench()), InventedShop.Pages());
        screen.Show(workbench).Resize(120, 36);
        ExpectedScreen.Matches("findings-120x36", screen.Text);

        screen.Resize(80, 24);
        ExpectedScreen.Matches("findings-80x24", screen.Text);
    }

    [Theory]
    [InlineData(160, 50)]
    [InlineData(60, 18)]
    [InlineData(40, 10)]
    [InlineData(12, 4)]
    public void Any_size_can_be_drawn_and_left(int width, int height)
    {
        using var screen = new HeadlessScreen(80, 24);
        using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench(2)), InventedShop.Pages());
        screen.Show(workbench).Resize(width, height);
        foreach (var page in "12345") screen.Press((Key)page).Press(Key.Tab, Key.CursorDown, Key.CursorRight);
        screen.Type("q");
        Assert.True(workbench.StopRequested);
    }
}
