using BuildLog.Tui.Shell;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Workbench;

/// <summary>A key of the workbench and what it does.</summary>
/// <param name="Says">What it does, as the list of all acts says it.</param>
/// <param name="Hint">What the line of keys says about it; null where it has no room.</param>
internal sealed record KeyAct(Key Key, string Says, KeyHint? Hint, Action Do)
{
    /// <summary>The key as a person reads it.</summary>
    public string KeyName => Hint?.Key ?? (Key == Key.Empty ? "" : Key.ToString());

    /// <summary>Other words people look for it by; never shown.</summary>
    public string AlsoCalled { get; init; } = "";

    /// <summary>It is about the chosen vehicle.</summary>
    public bool OfVehicle { get; init; }
}
