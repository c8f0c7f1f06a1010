using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Tests.Workbench;

public sealed class SmallTerminalTests
{
    [Fact]
    public void Below_eighty_by_twenty_four_the_pane_with_the_focus_has_the_screen()
    {
        using var screen = new HeadlessScreen(70, 20);
        using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench()), InventedShop.Pages());
        screen.Show(workbench);
        var name = workbench.Model.Chosen!.Name;
        workbench.SubViews.OfType<VehicleList>().Single().SetFocus();
        screen.Draw();
        Assert.DoesNotContain("1 Findings", screen.Text, StringComparison.Ordinal);

        screen.Press((Key)'2');
        Assert.Contains("Speeds", screen.Text, StringComparison.Ordinal);
        Assert.Contains(name, screen.Row(1), StringComparison.Ordinal);

        for (var tabs = 0; tabs < 4 && screen.Text.Contains("Speeds", StringComparison.Ordinal); tabs++) screen.Press(Key.Tab);
        Assert.DoesNotContain("Speeds", screen.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(70, 20)]
    [InlineData(60, 18)]
    public void Tab_goes_from_pane_to_pane_and_the_bottom_line_names_the_next(int width, int height)
    {
        using var screen = new HeadlessScreen(width, height);
        using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench()), InventedShop.Pages());
        screen.Show(workbench);
        workbench.SubViews.OfType<VehicleList>().Single().SetFocus();
        foreach (var (name, next) in new[] { ("vehicles", "strip"), ("strip", "page"), ("page", "vehicles") })
        {
            screen.Draw();
            Assert.Contains($" Tab {next} ", screen.Row(height - 1), StringComparison.Ordinal);
            ExpectedScreen.Matches($"small-{name}-{width}x{height}", screen.Text);
            screen.Press(Key.Tab);
        }
    }

    [Fact]
    public void Below_sixty_by_eighteen_it_says_what_it_needs_and_comes_back()
    {
        using var screen = new HeadlessScreen(80, 24);
        using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench()), InventedShop.Pages());
        screen.Show(workbench).Resize(40, 10);
        Assert.StartsWith("BuildLog needs 60 × 18 characters", screen.Text, StringComparison.Ordinal);

        screen.Resize(80, 24);
        Assert.DoesNotContain("BuildLog needs", screen.Text, StringComparison.Ordinal);
    }
}
