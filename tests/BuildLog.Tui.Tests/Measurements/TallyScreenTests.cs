using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Tests.Headless;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Tests.Measurements;

public sealed class TallyScreenTests : IDisposable
{
    private readonly HeadlessScreen screen = new();
    private readonly AxleTally tally = new("Harrow banjo", Wheels.Together);

    public void Dispose() => screen.Dispose();

    [Fact]
    public void Space_counts_the_propshaft_enter_the_wheel_and_a_clicker_may_type_anything()
    {
        using var counting = new TallyScreen(tally);
        screen.Show(counting).Press(Key.Space, (Key)'x', (Key)'4', Key.Enter);
        Assert.Equal((1, 3), (tally.DrivenTurns, tally.DrivingTurns));

        screen.Press(Key.Backspace);
        Assert.Equal((0, 3), (tally.DrivenTurns, tally.DrivingTurns));
        Assert.Contains("Taken back.", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hand_that_slipped_hears_once_that_its_key_counted()
    {
        const string Said = "Counted: any other key is a propshaft turn too";
        using var counting = new TallyScreen(tally);
        screen.Show(counting).Press(Key.Space);
        Assert.DoesNotContain(Said, screen.Text, StringComparison.Ordinal);

        screen.Press((Key)'x');
        Assert.Contains(Said, screen.Text, StringComparison.Ordinal);

        screen.Press((Key)'x');
        Assert.DoesNotContain(Said, screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void It_cannot_be_ended_between_two_wheel_turns_and_says_why()
    {
        using var counting = new TallyScreen(tally);
        screen.Show(counting).Press(Key.Enter, Key.Space, Key.S.WithCtrl);
        Assert.False(counting.StopRequested);
        Assert.Contains("Stop on a whole turn of the wheel", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clicker_for_showing_pages_counts_too()
    {
        using var counting = new TallyScreen(tally);
        screen.Show(counting).Press(Key.PageDown, Key.PageUp, Key.CursorRight, Key.F5, Key.Delete, Key.Tab, Key.B.WithCtrl, Key.B.WithAlt);
        Assert.Equal((0, 5), (tally.DrivenTurns, tally.DrivingTurns));
    }

    // Three wheel turns are enough of a roll-out.
    [Fact]
    public void The_bell_rings_once_for_enough_and_once_when_the_count_is_taken()
    {
        var bells = 0;
        var rolled = new RollTally("steel wheels");
        using var counting = new TallyScreen(rolled, () => bells++);
        screen.Show(counting).Press(Key.S.WithCtrl, Key.Space, Key.Space);
        Assert.Equal(0, bells);

        screen.Press(Key.Space);
        Assert.Equal(1, bells);

        screen.Press(Key.Space, Key.S.WithCtrl);
        Assert.Equal(2, bells);
        Assert.True(counting.StopRequested);
    }

    [Fact]
    public void Tab_counts_the_right_wheel_where_each_is_counted()
    {
        var each = new AxleTally("Harrow banjo", Wheels.Each);
        using var counting = new TallyScreen(each);
        screen.Show(counting).Press(Key.Enter, Key.Tab, Key.Tab, Key.Space);
        Assert.Equal((1, 2, 1), (each.DrivenTurns, each.OtherDrivenTurns, each.DrivingTurns));
        foreach (var caption in new[] { "Left wheel turns [Enter]", "Right wheel turns [Tab]", "Propshaft turns [Space]", "Bksp take back", "Ctrl+S done", "F1 help", "Esc leave" })
            Assert.Contains(caption, screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_it_has_to_say_is_never_cut()
    {
        using var narrow = new HeadlessScreen(60, 18);
        using var counting = new TallyScreen(tally);
        narrow.Show(counting).Press(Key.Enter, Key.Space, Key.S.WithCtrl);
        Assert.DoesNotContain("…", narrow.Text, StringComparison.Ordinal);
        Assert.Contains("until its mark", narrow.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 36)]
    public void Looks_like_its_picture(int width, int height)
    {
        using var large = new HeadlessScreen(width, height);
        using var counting = new TallyScreen(tally);
        large.Show(counting).Press([.. Enumerable.Repeat(Key.Space, 41), .. Enumerable.Repeat(Key.Enter, 10)]);
        ExpectedScreen.Matches($"tally-{width}x{height}", large.Text);
    }

    [Fact]
    public void Everything_stays_on_a_small_screen()
    {
        using var counting = new TallyScreen(tally);
        screen.Show(counting).Press([.. Enumerable.Repeat(Key.Space, 41), .. Enumerable.Repeat(Key.Enter, 10)]);
        Assert.Contains("Ratio 4.15", screen.Text, StringComparison.Ordinal);
        Assert.Contains("Esc leave", screen.Row(23), StringComparison.Ordinal);
        Assert.Contains("Ten wheel turns", screen.Text, StringComparison.Ordinal);
    }
}
