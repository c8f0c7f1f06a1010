using BuildLog.Tui.Shell;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Tests.Workbench;

public sealed class WorkbenchKeysTests : IDisposable
{
    private readonly HeadlessScreen screen = new();
    private readonly RecordingActs acts = new(InventedShop.Workbench());
    private readonly WorkbenchScreen workbench;

    public WorkbenchKeysTests()
    {
        workbench = new WorkbenchScreen(acts, InventedShop.Pages());
        screen.Show(workbench);
    }

    public void Dispose()
    {
        workbench.Dispose();
        screen.Dispose();
    }

    [Fact]
    public void Letters_call_their_acts()
    {
        screen.Type("neftrgs");
        Assert.Equal(["new", "edit", "fit anything", "turns", "roll", "goal", "sheet"], acts.Asked);
    }

    [Fact]
    public void Letters_work_in_every_pane()
    {
        for (var pane = 0; pane < 4; pane++) screen.Type("t").Press(Key.Tab);
        Assert.Equal(["turns", "turns", "turns", "turns"], acts.Asked);
    }

    [Fact]
    public void Moving_in_the_list_chooses_the_vehicle()
    {
        screen.Press(Key.CursorDown);
        Assert.Equal(["choose 2"], acts.Asked);
        Assert.Contains("Drover 4×4  on the road", screen.Row(1), StringComparison.Ordinal);
    }

    [Fact]
    public void The_key_of_a_page_goes_to_its_list_wherever_the_cursor_was()
    {
        string Chosen() => Enumerable.Range(0, 24).Select(screen.Row).First(row => row.Contains("│›", StringComparison.Ordinal));

        screen.Type("1");
        var first = Chosen();
        screen.Press(Key.Tab, Key.CursorDown);
        Assert.Equal(first, Chosen());

        screen.Type("1").Press(Key.CursorDown);
        Assert.NotEqual(first, Chosen());
    }

    [Fact]
    public void Enter_on_a_box_of_the_strip_fits_a_part_there()
    {
        screen.Press(Key.Tab, Key.CursorRight, Key.CursorRight, Key.Enter);
        Assert.Equal(["fit axle"], acts.Asked);
    }

    [Fact]
    public void F_on_a_box_of_the_strip_knows_the_position()
    {
        screen.Press(Key.Tab, Key.End).Type("f");
        Assert.Equal(["fit tyres"], acts.Asked);
    }

    [Fact]
    public void The_line_below_the_strip_says_in_full_what_the_box_had_to_cut()
    {
        screen.Press(Key.Tab, Key.End);
        Assert.Contains("tyres: 205/65R15 on Pond rims · 2.04 ± 0.03 m · rolled", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void In_a_four_by_four_down_goes_from_the_front_axle_to_the_rear_axle()
    {
        screen.Press(Key.CursorDown, Key.Tab, Key.CursorRight, Key.CursorRight, Key.CursorRight);
        Assert.Contains("front axle: Ridge front", screen.Text, StringComparison.Ordinal);

        screen.Press(Key.CursorDown, Key.Enter);
        Assert.Equal("fit rear-axle", acts.Asked[^1]);
    }

    [Fact]
    public void Digits_turn_the_pages_from_any_pane()
    {
        screen.Press((Key)'2');
        Assert.Contains("[2 Speeds]", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.Tab, (Key)'5');
        Assert.Contains("[5 History]", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.Tab, new Key('3').WithAlt);
        Assert.Contains("[3 Measured]", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_click_on_a_heading_turns_the_page()
    {
        screen.Click("4 Goal");
        Assert.Contains("[4 Goal]", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Choosing_a_finding_shows_why()
    {
        screen.Press(Key.Tab, Key.Tab, Key.CursorDown);
        Assert.Contains("An input is missing.", screen.Text, StringComparison.Ordinal);
        Assert.Contains("measure from the wheel centre", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Esc_stays_and_q_leaves()
    {
        screen.Press(Key.Esc);
        Assert.False(workbench.StopRequested);
        screen.Type("q");
        Assert.True(workbench.StopRequested);
    }

    [Fact]
    public void Ctrl_q_leaves_too()
    {
        screen.Press(Key.Q.WithCtrl);
        Assert.True(workbench.StopRequested);
    }

    [Fact]
    public void What_happened_stands_in_the_status_line_and_in_the_list_of_messages()
    {
        screen.Type("s");
        Assert.Equal(" Wrote heron-estate.pdf, 2 pages.", screen.Row(22));
        Assert.Equal(["Wrote heron-estate.pdf, 2 pages."], workbench.Messages);
    }

    [Fact]
    public void From_the_second_message_on_the_status_line_names_the_key_of_the_earlier_ones()
    {
        screen.Type("ss");
        Assert.EndsWith("m earlier", screen.Row(22), StringComparison.Ordinal);
    }

    [Fact]
    public void The_keys_fit_in_eighty_columns_in_every_pane()
    {
        for (var page = '1'; page <= '5'; page++)
        {
            screen.Press((Key)page);
            for (var pane = 0; pane < 5; pane++)
            {
                screen.Press(Key.Tab);
                Assert.EndsWith("s sheet", screen.Row(23), StringComparison.Ordinal);
            }
        }

        Assert.EndsWith("F1 help  q quit", screen.Row(0), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_page_has_its_help()
    {
        foreach (var page in new[] { "Workbench", "Forms", "Findings", "Speeds", "Measured", "Goal", "History" })
            Assert.NotEmpty(HelpText.Of(page));
    }
}
