using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Hunting;

/// <summary>What the keys of the wanted page do. Each returns what happened, or null if nothing did.</summary>
internal interface IWantedActs
{
    WantedModel Read(long vehicleId);

    /// <summary>Hunts a new part.</summary>
    string? New(IWorkbenchView view, long vehicleId);

    string? Edit(IWorkbenchView view, long vehicleId, WantedRow row);

    /// <summary>Enters an offer; the form says whether it would do.</summary>
    string? Offer(IWorkbenchView view, long vehicleId, WantedRow row);

    /// <summary>Types in what was counted in the yard: it becomes a part, its session and an offer.</summary>
    string? Count(IWorkbenchView view, long vehicleId, WantedRow row);

    /// <summary>Says of which offer the count of the row was made.</summary>
    string? Join(IWorkbenchView view, long vehicleId, WantedRow row);

    string? Card(IWorkbenchView view, long vehicleId, WantedRow row);

    /// <summary>It was found, or is wanted no more.</summary>
    string? Close(IWorkbenchView view, long vehicleId, WantedRow row);

    /// <summary>The offer, the count or the hunt of the row was entered by mistake.</summary>
    string Strike(long vehicleId, WantedRow row);
}
