using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Options;

/// <summary>What the keys of the options page do.</summary>
internal interface IOptionsActs
{
    /// <summary>Reads what may be tried, now, and searches it, beside the screen.</summary>
    Task<OptionsModel> Find(long vehicleId, IProgress<double> progress, CancellationToken cancel);

    /// <summary>Asks where parts may come from, and which may change.</summary>
    string? Choose(IWorkbenchView view);

    /// <summary>Makes the part of a way out a wanted one.</summary>
    /// <returns>What happened, or null if nothing did.</returns>
    string? Want(IWorkbenchView view, int place);

    /// <summary>Shows the yard card of a part of a way out, and writes it if wanted.</summary>
    string? Card(IWorkbenchView view, int place);

    /// <summary>Keeps a way out as a plan.</summary>
    string? Plan(IWorkbenchView view, int place);

    /// <summary>Shows what is fitted beside one to three ways out, and writes it if wanted.</summary>
    string? Beside(IWorkbenchView view, IReadOnlyList<int> places);

    /// <summary>Asks which of the usual questions it is, shows the answer side by side, and writes it if wanted.</summary>
    string? TradeOff(IWorkbenchView view, long vehicleId);

    /// <summary>Shows axle against tyre.</summary>
    void Map(IWorkbenchView view);
}
