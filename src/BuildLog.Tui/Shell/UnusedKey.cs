using Terminal.Gui.Input;

namespace BuildLog.Tui.Shell;

/// <summary>A key that means nothing where it was pressed: whoever pressed it is told so, as silence looks like a program that hangs.</summary>
internal static class UnusedKey
{
    /// <summary>What it is called; null for keys without a sign, such as Tab, which may be somebody else's.</summary>
    public static string? NameOf(Key key)
        => key.IsCtrl || key.IsAlt || (key != Key.Enter && key.AsRune.Value < ' ') ? null
            : key == Key.Enter || key == Key.Space ? key.ToString()
            : key.AsRune.ToString();
}
