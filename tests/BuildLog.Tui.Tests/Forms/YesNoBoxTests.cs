using BuildLog.Tui.Forms;
using BuildLog.Tui.Tests.Headless;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Tests.Forms;

public sealed class YesNoBoxTests : IDisposable
{
    private const string Yes = "(•) yes  ( ) no";
    private const string No = "( ) yes  (•) no";
    private readonly HeadlessScreen screen = new();
    private readonly FormScreen form = new(new Form
    {
        Title = "Sheet",
        Entries = [new TextEntry("name", "Name"), new YesNoEntry("costs", "With costs") { Initial = "no" }, new TextEntry("file", "File")],
        Save = _ => SaveOutcome.Done,
    });

    public void Dispose()
    {
        form.Dispose();
        screen.Dispose();
    }

    [Fact]
    public void The_letters_say_it_the_arrows_go_to_it_and_space_changes_it()
    {
        screen.Show(form).Press(Key.Tab);
        foreach (var (key, stands) in ((Key, string)[])[((Key)'y', Yes), ((Key)'y', Yes), ((Key)'n', No), (Key.CursorLeft, Yes), (Key.CursorLeft, Yes), (Key.CursorRight, No), (Key.Space, Yes), (Key.Space, No), (Key.Y.WithShift, Yes)])
            Assert.Contains(stands, screen.Press(key).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void No_other_key_and_no_click_beside_it_changes_it()
    {
        screen.Show(form).Type("a name with spaces").Press(Key.Tab).Type("xq.1").Press(Key.Enter).Type("a file").Press(Key.CursorUp, Key.CursorDown).Click("With costs");
        Assert.Contains(No, screen.Text, StringComparison.Ordinal);

        screen.Click("( ) yes");
        Assert.Contains(Yes, screen.Text, StringComparison.Ordinal);
    }
}
