using BuildLog.Tui.Shell;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Workbench;

/// <summary>A key of the workbench, what the line of keys says about it, and what it does.</summary>
internal sealed record KeyAct(Key Key, KeyHint? Hint, Action Do);
