using BuildLog.Tui.Forms;
using BuildLog.Tui.Tests.Headless;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Tests.Forms;

public sealed class FormMannersTests : IDisposable
{
    private readonly HeadlessScreen screen = new();

    public void Dispose() => screen.Dispose();

    [Fact]
    public void Tab_goes_round()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Show(form).Press(Key.Tab, Key.Tab, Key.Tab, Key.Tab, Key.Tab, Key.Tab);
        Assert.Equal("name", screen.Focused!.Id);

        screen.Press(Key.Tab.WithShift, Key.Tab.WithShift, Key.Tab.WithShift);
        Assert.Equal("notes", screen.Focused!.Id);
    }

    [Fact]
    public void Enter_leaves_a_choice_for_the_next_entry()
    {
        using var form = new FormScreen(VehicleForm.With());
        screen.Show(form).Press(Key.Tab, Key.Enter);
        Assert.Equal("roll", screen.Focused!.Id);
    }

    [Fact]
    public void A_proposal_is_replaced_by_what_is_typed()
    {
        using var form = new FormScreen(Asking(new TextEntry("day", "Date") { Initial = "today" }));
        screen.Show(form).Type("3 May 2026");
        Assert.DoesNotContain("today", screen.Text, StringComparison.Ordinal);
        Assert.Contains("3 May 2026", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_stood_there_is_kept_by_an_arrow_and_goes_on_being_typed()
    {
        using var form = new FormScreen(Asking(new TextEntry("first", "First"), new TextEntry("name", "Name") { Initial = "Heron" }));
        screen.Show(form).Press(Key.Tab, Key.End).Type(" II").Press(Key.Home).Type("Old ");
        Assert.Contains("Old Heron II", screen.Row(screen.Find("Name").Y), StringComparison.Ordinal);

        screen.Press(Key.Tab, Key.Tab, Key.Tab, Key.Tab).Type("Kestrel");
        Assert.DoesNotContain("Heron", screen.Text, StringComparison.Ordinal);
        Assert.Contains("Kestrel", screen.Row(screen.Find("Name").Y), StringComparison.Ordinal);
    }

    [Fact]
    public void One_key_empties_an_entry_and_another_brings_its_text_back()
    {
        using var form = new FormScreen(Asking(new TextEntry("name", "Name") { Initial = "Heron" }));
        screen.Show(form).Press(Key.U.WithCtrl, Key.U.WithCtrl);
        Assert.DoesNotContain("Heron", screen.Text, StringComparison.Ordinal);

        screen.Press(Key.Y.WithCtrl).Type(" II");
        Assert.Contains("Heron II", screen.Text, StringComparison.Ordinal);
    }

    // The library keeps the cursor at its place on the screen, which is another entry's once the form has scrolled, or outside of it.
    [Fact]
    public void The_cursor_stands_in_the_entry_also_where_the_form_has_scrolled()
    {
        using var form = new FormScreen(Asking([.. Enumerable.Range(1, 30).Select(k => new TextEntry($"entry{k}", $"Entry {k}"))]));
        screen.Show(form).Press([.. Enumerable.Repeat(Key.Tab, 24)]);

        Assert.Equal("entry25", screen.Focused!.Id);
        Assert.Equal(screen.Find("Entry 25 ").Y, screen.Focused.Cursor.Position?.Y);
    }

    // Otherwise nobody sees that the next key replaces it; without colours the sign is the cursor's own, reversed.
    [Fact]
    public void What_the_next_key_replaces_is_marked()
    {
        using var form = new FormScreen(Asking(new TextEntry("first", "First"), new TextEntry("name", "Name") { Initial = "Heron" }));
        var at = screen.Show(form).Find("Heron");
        var before = screen.AttributeAt(at);
        screen.Press(Key.Tab);
        Assert.NotEqual(before, screen.AttributeAt(at));
        Assert.Equal(Tui.Shell.Theme.Palette.Cursor, screen.AttributeAt(at));

        screen.Press(Key.End);
        Assert.Equal(Tui.Shell.Theme.Palette.FieldFocused, screen.AttributeAt(at));
    }

    [Theory]
    [InlineData("Heron\r\n  the blue one\n", "Heron the blue one")]
    [InlineData("Heron\rthe blue one", "Heron the blue one")]
    [InlineData("4.10  axle", "4.10  axle")]
    public void Several_pasted_lines_are_joined_in_a_field_of_one(string pasted, string taken)
        => Assert.Equal(taken, OneLineField.Joined(pasted));

    [Fact]
    public void A_form_just_opened_takes_a_paste_into_its_first_entry()
    {
        using var form = new FormScreen(Asking(new TextEntry("name", "Name")));
        screen.Show(form).App.RaisePasteEvent("Heron\r\n  the blue one\n");
        Assert.Contains("Heron the blue one", screen.Draw().Row(screen.Find("Name").Y), StringComparison.Ordinal);
    }

    [Fact]
    public void A_paste_leaves_behind_what_steers_a_terminal()
    {
        using var form = new FormScreen(Asking(new TextEntry("name", "Name")));
        screen.Show(form).App.RaisePasteEvent("Her\u001B\u0007on");
        Assert.Contains("Heron", screen.Draw().Row(screen.Find("Name").Y), StringComparison.Ordinal);
    }

    [Fact]
    public void A_form_begins_where_it_says()
    {
        var asking = Asking(new TextEntry("name", "Name"), new LinesEntry("marks", "Marks", 4) { Initial = "5:" });
        using var form = new FormScreen(asking with { BeginsAt = "marks" });
        screen.Show(form).Type("9775 mm");
        Assert.Contains("5:9775 mm", screen.Text, StringComparison.Ordinal);
    }

    // The library's undo keeps the whole text once more for every key: a page of text and a minute of typing took more than a gigabyte.
    [Fact]
    public void A_field_keeps_no_earlier_texts()
    {
        using var form = new FormScreen(Asking(new TextEntry("name", "Name")));
        screen.Show(form).Type("Heron");
        var field = Assert.IsType<OneLineField>(screen.Focused);
        field.Undo();
        Assert.Equal("Heron", field.Text);
    }

    [Fact]
    public void Down_passes_a_choice_of_several_rows_and_changes_nothing()
    {
        var options = Enumerable.Range(1, 3).Select(i => new ChoiceOption($"{i}", $"{i} {new string('x', 45)}")).ToList();
        using var form = new FormScreen(Asking(new ChoiceEntry("which", "Which", options) { Initial = "1" }, new TextEntry("name", "Name")));
        screen.Show(form).Press(Key.CursorDown);
        Assert.Contains("(•) 1", screen.Text, StringComparison.Ordinal);
        Assert.Equal("name", screen.Focused!.Id);
    }

    [Fact]
    public void Ctrl_a_marks_all_lines_and_the_next_key_replaces_them()
    {
        var text = new LinesText("10:20\n20:41");
        text.Press(EditKey.All);
        text.Insert("3");
        Assert.Equal("3", text.Text);

        text.Press(EditKey.All);
        text.Press(EditKey.Left);
        text.Insert("1");
        Assert.Equal("13", text.Text);
    }

    private static Form Asking(params Entry[] entries) => new() { Title = "Asking", Entries = entries, Save = _ => SaveOutcome.Done };
}
