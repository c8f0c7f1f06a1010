using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;

namespace BuildLog.Tui.Workbench;

/// <summary>The workbench as its acts see it: a place to show, to say and to ask. No terminal in it, so acts are tested without one.</summary>
public interface IWorkbenchView : IFormHost
{
    /// <summary>What is shown now.</summary>
    WorkbenchModel Model { get; }

    void Show(WorkbenchModel model);

    /// <summary>Says what happened, in the status line; kept in the list of messages.</summary>
    void Say(string message);

    /// <summary>Counts turns key by key; false when the count was left unfinished.</summary>
    bool Tally(TallyModel tally);
}
