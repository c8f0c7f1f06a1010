using BuildLog.Gearing.Checks;
using BuildLog.Tui.Hunting;
using BuildLog.Tui.Options;
using BuildLog.Tui.Plans;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Samples;

/// <summary>Ways out, a hunt and plans of the invented shop, written out by hand; acts that only note what they were asked.</summary>
internal sealed class InventedHunt : IOptionsActs, IWantedActs, IPlansActs
{
    public static OptionsModel Options { get; } = new(
        [
            new(1, 1, Verdict.Watch, ["1 open", "2 watch"], ["axle Hedge 5, row 2 (offered at 280.00 EUR)"], "Hedge 5, row 2", "2720 ± 70 rev/min", "280.00 EUR", "280.00 EUR", "sure by 88 %, what is open apart",
                [(Verdict.Open, "Cannot be said: the largest diameter the arches clear is not known."), (Verdict.Watch, "The claimed 3.08 is only quoted.")]),
            new(2, 1, Verdict.Open, ["1 open", "1 watch"], ["overdrive 0.78 unit (listed)"], "0.78 unit", "2860 ± 45 rev/min", "price not known", "price not known", "sure by 99 %, what is open apart", []),
            new(3, 2, Verdict.Open, ["1 open"], ["axle Hedge 7 (owned, on Wren coupé)", "tyres 205/70R15 (listed)"], "Hedge 7 + 205/70R15", "2640 ± 50 rev/min", "price not known", "price not known", "sure by 99 %, what is open apart", []),
        ],
        "Combinations looked at: 12,480; the 23 most promising by every check. Another 3,120 needed no look: one of their parts cannot be used.",
        ["Searched: what is owned, offered or listed, for gearbox, overdrive, axle or tyres.", "3,120 thrown out: Tyre diameter over the limit"]);

    public static WantedModel Wanted { get; } = new(
    [
        new(1, null, "longer axle", "2.79 to 3.34", "to 350.00 EUR", null, "hunting", ["axle ratio 2.79 to 3.34", "must have bolt circle: 5 × 114.3", "costs at most 350.00 EUR"]),
        new(1, 11, "Hedge 5, row 2", "3.08", "280.00 EUR", Verdict.Fits, "fits", ["fits: the claimed 3.08 ± 0.01 lies inside the axle ratio wanted, 2.79 to 3.34.", "at Pond yard"]),
        new(1, 12, "axle without a vehicle", "", "", Verdict.Watch, "watch", ["watch: no number is claimed; count or measure it."]),
    ]);

    public static PlansModel Plans { get; } = new(
        [new(5, "3.08 on the tall tyres", "3 May 2026", "rejected", Verdict.Clash, "1 clash 1 open", "2560 ± 40 rev/min", ["axle 3.08, tyres 215/75R15", "rejected: tyre diameter: 704 mm is over the limit"])],
        "axle 3.36");

    public List<string> Asked { get; } = [];

#pragma warning disable CA2000 // The screen the pages are added to disposes them.
    /// <summary>The pages that show all of it.</summary>
    public IReadOnlyList<VehiclePage> Pages() => [new OptionsPage(this), new WantedPage(this), new PlansPage(this)];
#pragma warning restore CA2000

    /// <summary>The search takes until it is ended.</summary>
    public bool IsSlow { get; set; }

    public IProgress<double>? Progress { get; private set; }

    public CancellationToken Cancel { get; private set; }

    public Task<OptionsModel> Find(long vehicleId, IProgress<double> progress, CancellationToken cancel)
    {
        (Progress, Cancel) = (progress, cancel);
        return IsSlow ? Endless(cancel) : Task.FromResult(Options);
    }

    public string? Choose(IWorkbenchView view) => Note("choose");

    public string? Want(IWorkbenchView view, int place) => Note($"want {place}");

    public string? Card(IWorkbenchView view, int place) => Note($"card {place}");

    public string? Plan(IWorkbenchView view, int place) => Note($"plan {place}");

    public string? TradeOff(IWorkbenchView view, long vehicleId) => Note("trade-off");

    public string? Beside(IWorkbenchView view, IReadOnlyList<int> places) => Note($"beside {string.Join(' ', places)}");

    public void Map(IWorkbenchView view) => Note("map");

    /// <summary>A hunt begun with h is there afterwards.</summary>
    public bool Begins { get; set; }

    WantedModel IWantedActs.Read(long vehicleId)
        => Begins && Asked.Contains("new") ? new([.. Wanted.Rows, new(2, null, "top gear", "", "", null, "hunting", [])]) : Wanted;

    public string? New(IWorkbenchView view, long vehicleId) => Note("new") ?? (Begins ? "Hunted now: top gear." : null);

    public string? Edit(IWorkbenchView view, long vehicleId, WantedRow row) => Note($"edit {row.What}");

    public string? Offer(IWorkbenchView view, long vehicleId, WantedRow row) => Note($"offer {row.What}");

    public string? Count(IWorkbenchView view, long vehicleId, WantedRow row) => Note($"count {row.What}");

    public string? Card(IWorkbenchView view, long vehicleId, WantedRow row) => Note($"card {row.What}");

    public string? Join(IWorkbenchView view, long vehicleId, WantedRow row) => Note($"join {row.What}");

    public string? Close(IWorkbenchView view, long vehicleId, WantedRow row) => Note($"close {row.What}");

    public string Strike(long vehicleId, WantedRow row) => Note($"strike {row.What}")!;

    PlansModel IPlansActs.Read(long vehicleId) => Plans;

    public string? Try(IWorkbenchView view, long vehicleId) => Note("try");

    public string? TryPlan(long vehicleId, PlanRow row) => Note($"try {row.Name}");

    public string? Keep(IWorkbenchView view, long vehicleId) => Note("keep");

    public string? Drop(IWorkbenchView view, long vehicleId) => Note("drop");

    public string? CarryOut(IWorkbenchView view, long vehicleId, PlanRow row) => Note($"carry out {row.Name}");

    public string? Decide(IWorkbenchView view, long vehicleId, PlanRow row) => Note($"decide {row.Name}");

    public string Strike(long vehicleId, PlanRow row) => Note($"strike {row.Name}")!;

    private static async Task<OptionsModel> Endless(CancellationToken cancel)
    {
        await Task.Delay(Timeout.Infinite, cancel);
        return OptionsModel.None;
    }

    private string? Note(string what)
    {
        Asked.Add(what);
        return null;
    }
}
