using BuildLog.Tui.Measurements;
using BuildLog.Tui.Search;
using BuildLog.Tui.WhatNow;

namespace BuildLog.Tui.Workbench;

/// <summary>What the workbench's keys do. Each act asks through the view, changes the record, and shows the new model.</summary>
public interface IWorkbenchActs
{
    /// <summary>The model to begin with.</summary>
    WorkbenchModel Open();

    /// <summary>The vehicles alone, none of them on the bench: all that the first page needs.</summary>
    WorkbenchModel OpenList();

    /// <summary>Where each vehicle stands, read one by one; may be walked beside the screen.</summary>
    IEnumerable<WhatNowRow> WhatNow();

    /// <summary>What holds the words typed so far.</summary>
    IReadOnlyList<FoundPlace> Find(string typed);

    void Undo(IWorkbenchView view);

    void Redo(IWorkbenchView view);

    /// <summary>Metric or inches and miles.</summary>
    void SwitchUnits(IWorkbenchView view);

    /// <summary>A part's card: its numbers with their evidence, and its life.</summary>
    IReadOnlyList<string> Card(long vehicleId, DrivelineBox box);

    void ChooseVehicle(IWorkbenchView view, long vehicleId);

    /// <summary>The record has changed: shows what it now says, and says what happened.</summary>
    void ShowAgain(IWorkbenchView view, string message);

    void NewVehicle(IWorkbenchView view);

    void EditVehicle(IWorkbenchView view);

    /// <summary>Fits or swaps a part.</summary>
    /// <param name="position">The position under the strip's cursor; null to ask which.</param>
    void FitPart(IWorkbenchView view, string? position);

    /// <summary>Takes the part off that the strip's cursor stands on.</summary>
    void TakeOff(IWorkbenchView view, string? position);

    void CountTurns(IWorkbenchView view);

    void RollOut(IWorkbenchView view);

    /// <summary>Asks which of all the measurements, and takes it.</summary>
    /// <param name="kind">The only kind that is wanted; null for any.</param>
    void Measure(IWorkbenchView view, SessionKind? kind = null);

    void EditGoal(IWorkbenchView view);

    void WriteSheet(IWorkbenchView view);

    /// <summary>Takes the vehicle, or a part on the shelf, out of the record.</summary>
    void Remove(IWorkbenchView view);
}
