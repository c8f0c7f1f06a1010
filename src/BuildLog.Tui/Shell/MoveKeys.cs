using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>The keys and the wheel that move through everything that is longer than its window.</summary>
internal static class MoveKeys
{
    /// <summary>Binds them; what each command does is the view's own matter.</summary>
    public static void BindMoves(this View view)
    {
        view.KeyBindings.Add(Key.CursorUp, Command.Up);
        view.KeyBindings.Add(Key.CursorDown, Command.Down);
        view.KeyBindings.Add(Key.PageUp, Command.PageUp);
        view.KeyBindings.Add(Key.PageDown, Command.PageDown);
        view.KeyBindings.Add(Key.Home, Command.Start);
        view.KeyBindings.Add(Key.End, Command.End);
        view.MouseBindings.Add(MouseFlags.WheeledUp, Command.Up);
        view.MouseBindings.Add(MouseFlags.WheeledDown, Command.Down);
    }
}
