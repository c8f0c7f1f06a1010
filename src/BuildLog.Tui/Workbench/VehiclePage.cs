using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>A page below the strip: its title in the tab line, its help, its keys, and what it shows of the vehicle.</summary>
internal abstract class VehiclePage : View
{
    /// <param name="helpPage">Name of its help text, the same in every language.</param>
    /// <param name="title">What stands in the tab line.</param>
    protected VehiclePage(string helpPage, string title)
    {
        HelpPage = helpPage;
        Title = title;
        CanFocus = true;
    }

    /// <summary>An act is wanted without its key, such as by a double click.</summary>
    public event EventHandler<PageAct>? ActAsked;

    /// <summary>Name of the help text that F1 shows here.</summary>
    public virtual string HelpPage { get; }

    /// <summary>The keys that only this page knows, the most useful first.</summary>
    public virtual IReadOnlyList<PageAct> Acts => [];

    /// <summary>All keys that it ever knows, those too that have nothing to work on now.</summary>
    public virtual IReadOnlyList<PageAct> EveryAct => Acts;

    /// <summary>The table in view, to be copied; null where there is none.</summary>
    public virtual TableText? Table => null;

    /// <summary>Shows a vehicle. Called when the page comes into view and when the record has changed, never for a page nobody sees.</summary>
    /// <param name="fromTop">Whether lists begin at their first row: another vehicle.</param>
    public abstract void Show(VehicleModel vehicle, bool fromTop);

    /// <summary>Takes the focus where its keys choose something, wherever it was before.</summary>
    public virtual void GoToBeginning() => SetFocus();

    /// <summary>Something that takes long is so far; empty when it is over.</summary>
    public event EventHandler<string>? Progressed;

    /// <summary>Ends what takes long, as Esc asks.</summary>
    /// <returns>Whether there was anything to end.</returns>
    public virtual bool End() => false;

    protected void SayHowFar(string text) => Progressed?.Invoke(this, text);

    protected void Ask(PageAct act) => ActAsked?.Invoke(this, act);
}
