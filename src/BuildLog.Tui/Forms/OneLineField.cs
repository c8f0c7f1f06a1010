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
        KeyBindings.Remove(Key.U.WithCtrl);
        KeyBindings.Add(Key.U.WithCtrl, Command.DeleteAll);
        AddCommand(Command.DeleteAll, EmptyOrBringBack);
        KeyBindings.Remove(Key.Z.WithCtrl); // the library undoes typing with it; here as everywhere it hands the terminal back to the shell
        ValueChanged += (_, _) => ClearHistoryChanges(); // it would keep the whole text once more for every key
    }

    // Entering a field marks its text, and the next key replaces it: that has to be seen, without colours too.
    protected override bool OnGettingAttributeForRole(in VisualRole role, ref TgAttribute currentAttribute)
    {
        currentAttribute = role == VisualRole.Active ? Theme.Palette.Cursor : HasFocus ? Theme.Palette.FieldFocused : Theme.Palette.Field;
        return true;
    }

    // A slip of that key loses nothing: the empty field gives back what stood in it.
    private bool? EmptyOrBringBack()
    {
        (Text, emptied) = Text.Length > 0 ? ("", Text) : (emptied, "");
        MoveEnd();
        return true;
    }

    public bool TakePaste(string pasted) => OnPaste(Joined(pasted));

    protected override string OnSanitizingPaste(string raw) => Joined(raw);

    internal static string Joined(string pasted)
        => string.Join(' ', pasted.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries));
}
