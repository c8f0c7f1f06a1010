using BuildLog.Tui.Forms;
using BuildLog.Tui.Tests.Headless;
using Terminal.Gui.Input;
using Terminal.Gui.Views;

namespace BuildLog.Tui.Tests.Forms;

public sealed class FormScreenTests : IDisposable
{
    private readonly HeadlessScreen screen = new();

    public void Dispose() => screen.Dispose();

    [Fact]
    public void Looks_like_its_picture()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Show(form).Type("Heron").Press(Key.Tab, Key.CursorRight, Key.Tab, Key.Tab).Type("2040 mm");
        ExpectedScreen.Matches("form-80x24", screen.Text);
    }

    [Fact]
    public void Below_the_least_size_it_says_so_and_what_was_typed_comes_back()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Show(form).Type("Heron").Resize(50, 14);
        Assert.Contains("BuildLog needs 60 × 18 characters", screen.Text, StringComparison.Ordinal);
        Assert.Contains("50 × 14", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.S.WithCtrl, Key.Esc, (Key)'x');

        screen.Resize(80, 24);
        Assert.DoesNotContain("BuildLog needs", screen.Text, StringComparison.Ordinal);
        Assert.Contains("Heron ", screen.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Leave without saving?", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_message_stands_under_the_wrong_entry_which_gets_the_focus()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Show(form).Type("Heron").Press(Key.Tab, Key.Tab).Type("30 inn").Press(Key.Tab, Key.S.WithCtrl);

        Assert.False(form.StopRequested);
        Assert.Equal("roll", screen.Focused!.Id);
        Assert.Contains("! “30 inn” is not a length", screen.Row(screen.Find("Roll").Y + 1), StringComparison.Ordinal);
    }

    // With its text marked, the next key would have thrown all of it away.
    [Fact]
    public void What_was_refused_is_mended_not_typed_anew()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Show(form).Type("Heron").Press(Key.Tab, Key.Tab).Type("30 inn").Press(Key.Tab, Key.S.WithCtrl).Type("x");

        Assert.Contains("30 innx", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_entry_that_is_left_wrong_says_so_before_saving()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Show(form).Press(Key.Tab, Key.Tab).Type("30 inn").Press(Key.Tab);

        Assert.Contains("! “30 inn” is not a length", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_keys_and_home_and_end_go_through_the_entries_where_the_entry_itself_has_no_use_for_them()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Show(form).Press(Key.PageDown);
        Assert.Equal("notes", screen.Focused!.Id);
        screen.Press(Key.PageUp);
        Assert.Equal("name", screen.Focused!.Id);
        screen.Press(Key.Tab, Key.End);
        Assert.Equal("notes", screen.Focused!.Id);
        screen.Press(Key.PageUp, Key.Tab, Key.Home);
        Assert.Equal("name", screen.Focused!.Id);
    }

    [Fact]
    public void Hidden_entries_appear_when_the_choice_asks_for_them()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Show(form);
        Assert.DoesNotContain("Transfer ratio", screen.Text, StringComparison.Ordinal);

        screen.Press(Key.Tab, Key.CursorRight);
        Assert.Contains("Transfer ratio", screen.Text, StringComparison.Ordinal);

        screen.Press(Key.Tab);
        Assert.Equal("transfer", screen.Focused!.Id);
    }

    [Fact]
    public void What_the_values_come_to_follows_every_key()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Show(form).Type("Her");
        Assert.Contains("Will be called Her.", screen.Text, StringComparison.Ordinal);

        screen.Type("on");
        Assert.Contains("Will be called Heron.", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Enter_goes_from_entry_to_entry_and_on_the_save_button_saves()
    {
        FormValues? saved = null;
        using var form = new FormScreen(VehicleForm.With(values =>
        {
            saved = values;
            return SaveOutcome.Done;
        }));
        screen.Show(form).Type("Heron").Press(Key.Enter, Key.Tab, Key.Enter).Type("blue").Press(Key.Enter).Type("rusty");
        Assert.Null(saved);

        screen.Press(Key.Tab);
        Assert.Equal("Save", ((Button)screen.Focused!).Text);
        screen.Press(Key.Enter);
        Assert.Equal("Heron", saved!["name"]);
        Assert.Equal(["blue", "rusty"], saved.Lines("notes"));
        Assert.True(form.StopRequested);
    }

    [Fact]
    public void A_refused_save_keeps_the_form_and_everything_in_it()
    {
        using var form = new FormScreen(VehicleForm.With(_ => SaveOutcome.Refuse("The record is in use by another program.")));
        screen.Show(form).Type("Heron").Press(Key.S.WithCtrl);

        Assert.False(form.StopRequested);
        Assert.Contains("! The record is in use by another program.", screen.Text, StringComparison.Ordinal);
        Assert.Contains("Heron", screen.Row(screen.Find("Name").Y), StringComparison.Ordinal);
    }

    [Fact]
    public void Esc_closes_a_form_that_is_as_it_was()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Show(form).Press(Key.Esc);
        Assert.True(form.StopRequested);
    }

    [Fact]
    public void Esc_on_a_changed_form_asks_and_keeps_it_on_the_safe_answer()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Run(
            form,
            Steps.Type("Heron"),
            Steps.Press(Key.Esc),
            Steps.See("Leave without saving?"),
            Steps.Press(Key.Enter),
            Steps.NoLongerSee("Leave without saving?"),
            Steps.Check(s => Assert.Contains("Heron", s.Row(s.Find("Name").Y), StringComparison.Ordinal)),
            Steps.Press(Key.Esc),
            Steps.See("Leave without saving?"),
            Steps.Press(Key.CursorRight),
            Steps.Press(Key.Enter));
    }

    [Fact]
    public void Ctrl_q_asks_like_esc()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Run(
            form,
            Steps.Type("Heron"),
            Steps.Press(Key.Q.WithCtrl),
            Steps.See("Leave without saving?"),
            Steps.Press(Key.CursorRight),
            Steps.Press(Key.Enter));
    }

    // Whoever did not see the question would take it for a program that hears no key.
    [Fact]
    public void Whoever_types_on_over_a_question_is_told_what_answers_it()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Run(
            form,
            Steps.Type("Heron"),
            Steps.Press(Key.Q.WithCtrl),
            Steps.See("Leave without saving?"),
            Steps.Press((Key)'x'),
            Steps.See("x is no answer. Enter: the marked one. Esc: Keep typing"),
            Steps.Press(Key.CursorRight),
            Steps.NoLongerSee("x is no answer"),
            Steps.Press(Key.Enter));
    }

    [Fact]
    public void A_key_that_means_nothing_in_a_box_is_answered_until_the_next()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Run(
            form,
            Steps.Press(Key.F1),
            Steps.See("Help: "),
            Steps.Press((Key)'x'),
            Steps.See("x does nothing here."),
            Steps.Press(Key.CursorDown),
            Steps.NoLongerSee("x does nothing here."),
            Steps.Press(Key.Esc),
            Steps.Press(Key.Esc));
    }

    [Fact]
    public void F1_opens_the_help_once_more_that_of_forms_and_esc_comes_back_to_the_form()
    {
        using var form = new FormScreen(VehicleForm.With() with { HelpPage = "Vehicle" });
        screen.Run(
            form,
            Steps.Press(Key.F1),
            Steps.See("F1 forms"),
            Steps.Press(Key.F1),
            Steps.See("Help: forms"),
            Steps.Press(Key.F1),
            Steps.See("F1 forms"),
            Steps.Press(Key.Esc),
            Steps.NoLongerSee("Help: "),
            Steps.See("New vehicle"),
            Steps.Press(Key.Esc));
    }

    [Fact]
    public void A_form_longer_than_the_screen_scrolls_to_the_entry_in_hand()
    {
        var entries = Enumerable.Range(1, 20).Select(i => new TextEntry($"e{i}", $"Entry {i}") { Hint = "hint" }).ToList();
        using var form = new FormScreen(new Form { Title = "Long", Entries = entries, Save = _ => SaveOutcome.Done });
        screen.Show(form);
        Assert.DoesNotContain("Entry 20", screen.Text, StringComparison.Ordinal);
        Assert.Contains("▼ 10 more", screen.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(" above", screen.Text, StringComparison.Ordinal);

        screen.Press([.. Enumerable.Repeat(Key.Tab, 10)]);
        Assert.Contains("▲ 2 above  ▼ 9 more", screen.Text, StringComparison.Ordinal);

        screen.Press([.. Enumerable.Repeat(Key.Tab, 9)]);
        Assert.Contains("Entry 20", screen.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("▼", screen.Text, StringComparison.Ordinal);
        screen.Press([.. Enumerable.Repeat(Key.Tab.WithShift, 19)]);
        Assert.Contains("Entry 1 ", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Cautions_come_first_and_enter_does_not_wave_them_through()
    {
        var form = VehicleForm.With(cautions: ["Chock the wheels.", "Battery off."]);
        using var start = new Runnable();
        var filled = true;
        start.IsRunningChanged += (_, e) =>
        {
            if (e.Value) screen.App.Invoke(() => filled = FormScreen.Fill(screen.App, form, new Scratchpad()));
        };
        screen.Run(
            start,
            Steps.See("1. Chock the wheels."),
            Steps.Press(Key.Enter),
            Steps.See("2. Battery off."),
            Steps.See("Enter does not say that all of this is so: a does"),
            Steps.Check(s => Assert.DoesNotContain("Driven wheels", s.Text, StringComparison.Ordinal)),
            Steps.Press((Key)'a'),
            Steps.See("Driven wheels"),
            Steps.Press(Key.Esc),
            Steps.NoLongerSee("Driven wheels"),
            Steps.Check(s => s.App.RequestStop(start)));
        Assert.False(filled);
    }

    [Fact]
    public void After_the_cautions_the_set_up_is_drawn_and_a_form_that_asks_nothing_is_done_then()
    {
        var form = new Form { Title = "Ready", Cautions = ["Chock the wheels."], SetUp = ["   wheel ---O---", "1 Mark the flange."], Entries = [], Save = _ => SaveOutcome.Done };
        using var start = new Runnable();
        var filled = false;
        start.IsRunningChanged += (_, e) =>
        {
            if (e.Value) screen.App.Invoke(() => filled = FormScreen.Fill(screen.App, form, new Scratchpad()));
        };
        screen.Run(
            start,
            Steps.See("1. Chock the wheels."),
            Steps.Press((Key)'a'),
            Steps.See("1 Mark the flange."),
            Steps.Press(Key.Enter),
            Steps.NoLongerSee("1 Mark the flange."),
            Steps.Check(s => s.App.RequestStop(start)));
        Assert.True(filled);
    }
}
