using BuildLog.Tui.Measurements;
using BuildLog.Tui.Search;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.WhatNow;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Workbench;

/// <summary>Acts that only note what they were asked to do.</summary>
internal sealed class RecordingActs(WorkbenchModel open) : IWorkbenchActs
{
    public List<string> Asked { get; } = [];

    public IReadOnlyList<WhatNowRow> Rows { get; init; } = [];

    public IReadOnlyList<FoundPlace> Places { get; init; } = [];

    public Action? OnNewVehicle { get; set; }

    public Action? OnChoose { get; init; }

    public WorkbenchModel Open() => open;

    public WorkbenchModel OpenList() => open with { Chosen = null };

    public IEnumerable<WhatNowRow> WhatNow() => Rows;

    public IReadOnlyList<FoundPlace> Find(string typed) => [.. Places.Where(place => place.Says.Contains(typed, StringComparison.OrdinalIgnoreCase))];

    public IReadOnlyList<string> Card(long vehicleId, DrivelineBox box) => [];

    public void TakeOff(IWorkbenchView view, string? position) => Asked.Add($"take off {position}");

    public void Undo(IWorkbenchView view) => Asked.Add("undo");

    public void Redo(IWorkbenchView view) => Asked.Add("redo");

    public void SwitchUnits(IWorkbenchView view) => Asked.Add("units");

    public void ChooseVehicle(IWorkbenchView view, long vehicleId)
    {
        Asked.Add($"choose {vehicleId}");
        OnChoose?.Invoke();
        view.Show(InventedShop.Workbench(vehicleId));
    }

    public void ShowAgain(IWorkbenchView view, string message) => Asked.Add($"again {message}");

    public void NewVehicle(IWorkbenchView view)
    {
        Asked.Add("new");
        OnNewVehicle?.Invoke();
    }

    public void EditVehicle(IWorkbenchView view) => Asked.Add("edit");

    public void FitPart(IWorkbenchView view, string? position) => Asked.Add($"fit {position ?? "anything"}");

    public void CountTurns(IWorkbenchView view) => Asked.Add("turns");

    public void RollOut(IWorkbenchView view) => Asked.Add("roll");

    public void Measure(IWorkbenchView view, SessionKind? kind = null) => Asked.Add(kind is null ? "measure" : $"measure {kind.Words}");

    public void EditGoal(IWorkbenchView view) => Asked.Add("goal");

    public void Remove(IWorkbenchView view) => Asked.Add("remove");

    public void WriteSheet(IWorkbenchView view)
    {
        Asked.Add("sheet");
        view.Say("Wrote heron-estate.pdf, 2 pages.");
    }
}
