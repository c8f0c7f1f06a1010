using BuildLog.Gearing.Languages;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;
using static BuildLog.Tui.Tests.Headless.Steps;

namespace BuildLog.Tui.Tests.Workbench;

/// <summary>The keys that are not about one vehicle: back and forth, find, all acts, units, copy, and the pages of the record.</summary>
public sealed class KeysOfTheShopTests : IDisposable
{
    private readonly HeadlessScreen screen = new();
    private readonly RecordingActs acts = new(InventedShop.Workbench())
    {
        Places = [new("turn count", "count of Ridge front", 2, "Measured"), new("supplier", "Tolland yard", null, "Findings")],
    };

    private readonly WorkbenchScreen workbench;

    public KeysOfTheShopTests() => workbench = new(acts, InventedShop.Pages());

    public void Dispose()
    {
        workbench.Dispose();
        screen.Dispose();
    }

    [Fact]
    public void Undo_redo_and_units_are_a_key_each()
    {
        screen.Show(workbench).Type("zyu");
        Assert.Equal(["undo", "redo", "units"], acts.Asked);
    }

    [Fact]
    public void Finding_goes_to_the_vehicle_and_the_page()
    {
        screen.Run(workbench, Press((Key)'/'), See("Find in the whole shop"), Type("ridge"), NoLongerSee("Tolland"), Press(Key.Enter), See("[3 Measured]"), Press((Key)'q'));
        Assert.Equal(["choose 2"], acts.Asked);
    }

    [Fact]
    public void The_list_of_all_acts_narrows_as_one_types_and_does_what_is_taken()
    {
        screen.Run(workbench, Press((Key)'a'), See("All acts"), Type("sheet"), NoLongerSee("goal"), Press(Key.Enter), See("Wrote heron-estate.pdf"), Press((Key)'q'));
        Assert.Equal(["sheet"], acts.Asked);
    }

    [Fact]
    public void A_table_goes_to_the_terminals_clipboard_as_text()
    {
        screen.Run(workbench, Press((Key)'2'), Press((Key)'x'), See("Copy the table"), Press(Key.Enter), See("clipboard. Where"), Press((Key)'q'));
    }

    [Fact]
    public void Left_and_right_turn_the_pages()
    {
        screen.Show(workbench).Press((Key)'1', Key.CursorRight);
        Assert.Contains("[2 Speeds]", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.CursorLeft, Key.CursorLeft);
        Assert.Contains("[5 History]", screen.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 36)]
    public void The_pages_of_the_record_look_like_their_pictures(int width, int height)
    {
        using var small = new SmallShop().WithWork();
        small.Shop.Add(new Data.Decisions.Decision(small.Bittern) { What = "axle 3.08 instead of 3.55", Date = new(2026, 5, 3), Why = "quiet at 110", AgreedBy = "Ann Ferrow" });
        using var window = new HeadlessScreen(width, height);
        using var bench = new WorkbenchScreen(new WorkbenchActs(small.Shop, small.Clock, UnitSystem.Metric), BenchPages.All(small.Shop, small.Clock));
        window.Show(bench);
        foreach (var (key, name) in new[] { ('6', "jobs"), ('7', "papers"), ('8', "decisions") })
        {
            window.Press((Key)key);
            ExpectedScreen.Matches($"{name}-{width}x{height}", window.Text);
        }
    }

    [Theory]
    [InlineData("en")]
    [InlineData("nl")]
    public void Every_page_has_its_help(string code)
    {
        using var spoken = Language.Read(code)!.Speak();
        using var small = new SmallShop().WithWork();
        Assert.All(BenchPages.All(small.Shop, small.Clock), page =>
        {
            using (page) Assert.NotEmpty(HelpText.Of(page.HelpPage));
        });
    }
}
