using BuildLog.Tui.Shell;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Workbench;

/// <summary>A key that works while its page is in view.</summary>
/// <param name="Key">Enter also answers a double click on a row.</param>
/// <param name="Says">What it does, as the list of all acts says it.</param>
/// <param name="Hint">What the line of keys says about it.</param>
/// <param name="Do">Asks and stores; returns what happened, upon which everything is shown anew, or null if nothing did.</param>
internal sealed record PageAct(Key Key, string Says, KeyHint Hint, Func<IWorkbenchView, VehicleModel, string?> Do)
{
    /// <summary>It needs no row to be chosen first: it can be done as soon as its page is in view.</summary>
    public bool AtOnce { get; init; }

    /// <summary>It is about what lies under the cursor, which is on the page only while the page has the focus.</summary>
    public bool IsOfTheCursor => Key == Key.Enter || Key == (Key)'-';
}
