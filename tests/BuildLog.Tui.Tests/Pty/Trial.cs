using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Search;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Tests.Workbench;
using BuildLog.Tui.WhatNow;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Pty;

/// <summary>The workbench on invented data with acts that misbehave on demand, for a test to run in a terminal.</summary>
/// <remarks>Keys: n throws on another thread, e ends the process from within, f fails on the screen's own thread.</remarks>
internal static class Trial
{
    public const string Word = "trial";
    public const int ExitFromWithin = 7;

    public static int Run(string logFile) => WorkbenchStart.Run(new Misbehaving(), InventedShop.Pages, new ErrorLog(logFile), new Scratchpad());

    private sealed class Misbehaving : IWorkbenchActs
    {
        private readonly RecordingActs inner = new(InventedShop.Workbench()) { Rows = InventedShop.WhatNow };

        public WorkbenchModel Open() => inner.Open();

        public WorkbenchModel OpenList() => inner.OpenList();

        public IEnumerable<WhatNowRow> WhatNow() => inner.WhatNow();

        public IReadOnlyList<FoundPlace> Find(string typed) => inner.Find(typed);

        public IReadOnlyList<string> Card(long vehicleId, DrivelineBox box) => inner.Card(vehicleId, box);

        public void Undo(IWorkbenchView view) => inner.Undo(view);

        public void Redo(IWorkbenchView view) => inner.Redo(view);

        public void SwitchUnits(IWorkbenchView view) => inner.SwitchUnits(view);

        public void ChooseVehicle(IWorkbenchView view, long vehicleId) => inner.ChooseVehicle(view, vehicleId);

        public void ShowAgain(IWorkbenchView view, string message) => inner.ShowAgain(view, message);

        public void NewVehicle(IWorkbenchView view) => new Thread(() => throw new InvalidOperationException("dropped a spanner")).Start();

        public void EditVehicle(IWorkbenchView view) => Environment.Exit(ExitFromWithin);

        public void FitPart(IWorkbenchView view, string? position) => throw new InvalidOperationException("the thread is stripped");

        public void TakeOff(IWorkbenchView view, string? position) => inner.TakeOff(view, position);

        public void CountTurns(IWorkbenchView view) => view.Fill(Forms.VehicleForm.With());

        public void RollOut(IWorkbenchView view) => inner.RollOut(view);

        public void Measure(IWorkbenchView view, SessionKind? kind = null) => inner.Measure(view, kind);

        public void EditGoal(IWorkbenchView view) => inner.EditGoal(view);

        public void WriteSheet(IWorkbenchView view) => inner.WriteSheet(view);

        public void Remove(IWorkbenchView view) => inner.Remove(view);
    }
}
