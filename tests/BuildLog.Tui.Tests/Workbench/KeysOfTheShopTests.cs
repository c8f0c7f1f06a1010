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

    [Theory]
    [InlineData("undo", "undo")]
    [InlineData("redo", "redo")]
    [InlineData("print", "sheet")]
    [InlineData("weighbridge", "measure weighbridge")]
    public void An_act_is_found_by_what_others_call_it(string typed, string asked)
    {
        screen.Run(workbench, Press((Key)'a'), See("All acts"), Type(typed), NoLongerSee("goal"), Press(Key.Enter), NoLongerSee("All acts"), Press((Key)'q'));
        Assert.Equal([asked], acts.Asked);
    }

    [Fact]
    public void What_only_another_page_can_do_is_found_and_what_is_about_a_row_is_only_shown_the_way_to()
    {
        using var small = new SmallShop().WithWork();
        using var bench = new WorkbenchScreen(new WorkbenchActs(small.Shop, small.Clock, UnitSystem.Metric), BenchPages.All(small.Shop, small.Clock));
        screen.Run(
            bench, Press((Key)'5'), Press((Key)'a'), See("All acts"), Type("yard card"), See("Options: c The yard card"), Press(Key.Esc),
            Press((Key)'a'), See("All acts"), Type("hours"), See("Jobs: h Note hours"), Press(Key.Enter), See("[6 Jobs]"), See("h on this page: Note hours worked on the job."), Press((Key)'1'),
            Press((Key)'a'), See("All acts"), Type("add job"), See("Jobs: + Add a job"), Press(Key.Enter), See("Add what to Bittern?"), Press(Key.Esc), NoLongerSee("Add what"), Press((Key)'q'));
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 36)]
    public void The_boxes_of_the_workbench_look_like_their_pictures(int width, int height)
    {
        using var window = new HeadlessScreen(width, height);
        Step Picture(string name) => Check(s => ExpectedScreen.Matches($"{name}-{width}x{height}", s.Text));
        window.Run(
            workbench,
            Press((Key)'s'), See("Wrote heron"),
            Press(Key.F1), See("Help: "), Picture("help"), Press(Key.Esc), NoLongerSee("Help: "),
            Press((Key)'a'), See("All acts"), Picture("acts"), Press(Key.Esc), NoLongerSee("All acts"),
            Press((Key)'/'), See("Find in the whole"), Type("o"), See("Tolland"), Picture("find"), Press(Key.Esc), NoLongerSee("Find in"),
            Press((Key)'m'), See("What happened"), Picture("messages"), Press(Key.Esc), NoLongerSee("What happened"), Press((Key)'q'));
    }

    [Fact]
    public void F1_in_a_list_to_choose_from_helps_with_the_page_it_was_opened_from()
        => screen.Run(
            workbench, Press((Key)'2'), Press((Key)'x'), See("Copy the table"), See("F1 help"), Press(Key.F1), See("Help: "), Press(Key.Esc), NoLongerSee("Help: "), Press(Key.Esc),
            NoLongerSee("Copy the table"), Press((Key)'q'));

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
        foreach (var (key, name) in new[] { ('6', "jobs"), ('7', "papers"), ('8', "decisions"), ('9', "changes") })
        {
            window.Press((Key)key);
            ExpectedScreen.Matches($"{name}-{width}x{height}", window.Text.Replace(Environment.MachineName, "bench", StringComparison.Ordinal));
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
