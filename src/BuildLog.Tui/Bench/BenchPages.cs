using BuildLog.Data;
using BuildLog.Tui.Changes;
using BuildLog.Tui.Decisions;
using BuildLog.Tui.Fitments;
using BuildLog.Tui.Hunting;
using BuildLog.Tui.Jobs;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Options;
using BuildLog.Tui.Papers;
using BuildLog.Tui.Plans;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Bench;

#pragma warning disable CA2000 // The screen the pages are added to disposes them.

/// <summary>The pages below the strip, in the order of their digits.</summary>
internal static class BenchPages
{
    /// <summary>All of them. A new page gets its line here.</summary>
    /// <param name="shop">The record.</param>
    /// <param name="clock">Says which day it is.</param>
    /// <param name="forNow">What is chosen on the bench, shared with its acts; null for a bench of its own.</param>
    public static IReadOnlyList<VehiclePage> All(Shop shop, TimeProvider clock, ForNow? forNow = null)
    {
        var chosen = forNow ?? new();
        return
        [
            new FindingsPage(),
            new SpeedsPage(new(shop, clock, chosen)),
            new MeasuredPage(new SessionActs(shop, clock, chosen)),
            new GoalPage(),
            new HistoryPage(new FitmentActs(shop, clock)),
            new JobsPage(new JobsActs(shop, clock)),
            new PapersPage(new PapersActs(shop)),
            new DecisionsPage(new DecisionsActs(shop, clock)),
            new ChangesPage(new ChangesActs(shop, clock)),
            new OptionsPage(new OptionsActs(shop, clock, chosen)),
            new WantedPage(new WantedActs(shop, clock, chosen)),
            new PlansPage(new PlansActs(shop, clock, chosen)),
        ];
    }
}

#pragma warning restore CA2000
