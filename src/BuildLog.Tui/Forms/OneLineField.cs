using BuildLog.Tui.Shell;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.Views;
using TgAttribute = Terminal.Gui.Drawing.Attribute;

namespace BuildLog.Tui.Forms;

/// <summary>A field of one line: what is pasted in several lines is joined, where the library would keep the first alone.</summary>
internal sealed class OneLineField : TextField, ITakesPaste
{
    private string emptied = "";

    public OneLineField()
    {
        foreach (var (key, command) in new[] { (Key.U.WithCtrl, Command.DeleteAll), (Key.Y.WithCtrl, Command.Redo) })
        {
            KeyBindings.Remove(key);
            KeyBindings.Add(key, command);
        }

        AddCommand(Command.DeleteAll, () => Put("", Text.Length > 0 ? Text : emptied));
        AddCommand(Command.Redo, () => Put(Text + emptied, ""));
        KeyBindings.Remove(Key.Z.WithCtrl); // the library undoes typing with it; here as everywhere it hands the terminal back to the shell
        ValueChanged += (_, _) => ClearHistoryChanges(); // it would keep the whole text once more for every key
    }

    // Entering a field marks its text, and the next key replaces it: that has to be seen, without colours too.
    protected override bool OnGettingAttributeForRole(in VisualRole role, ref TgAttribute currentAttribute)
    {
        currentAttribute = role == VisualRole.Active ? Theme.Palette.Cursor : HasFocus ? Theme.Palette.FieldFocused : Theme.Palette.Field;
        return true;
    }

    /// <summary>Puts the cursor where its sign stands now: the library keeps it where it stood on the screen, also when what is around it has scrolled.</summary>
    public void PlaceCursor()
    {
        if (SelectedLength > 0) return; // what is marked shows where one is, and stays marked

        var at = InsertionPoint;
        InsertionPoint = at;
    }

    // What was emptied stays at hand until it is brought back or something else is emptied.
    private bool? Put(string text, string atHand)
    {
        (Text, emptied) = (text, atHand);
        MoveEnd();
        return true;
    }

    public bool TakePaste(string pasted) => OnPaste(Joined(pasted));

    protected override string OnSanitizingPaste(string raw) => Joined(raw);

    internal static string Joined(string pasted)
        => string.Join(' ', pasted.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries));
}
