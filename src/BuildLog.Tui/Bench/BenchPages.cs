using BuildLog.Data;
using BuildLog.Tui.Changes;
using BuildLog.Tui.Decisions;
using BuildLog.Tui.Fitments;
using BuildLog.Tui.Jobs;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Papers;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Bench;

#pragma warning disable CA2000 // The screen the pages are added to disposes them.

/// <summary>The pages below the strip, in the order of their digits.</summary>
internal static class BenchPages
{
    /// <summary>All of them. A new page gets its line here.</summary>
    public static IReadOnlyList<VehiclePage> All(Shop shop, TimeProvider clock) =>
    [
        new FindingsPage(),
        new SpeedsPage(),
        new MeasuredPage(new SessionActs(shop)),
        new GoalPage(),
        new HistoryPage(new FitmentActs(shop, clock)),
        new JobsPage(new JobsActs(shop, clock)),
        new PapersPage(new PapersActs(shop)),
        new DecisionsPage(new DecisionsActs(shop, clock)),
        new ChangesPage(new ChangesActs(shop, clock)),
    ];

    /// <summary>The first five without the record: they show what the vehicle's model says.</summary>
    public static IReadOnlyList<VehiclePage> OfTheModel() => [new FindingsPage(), new SpeedsPage(), new MeasuredPage(), new GoalPage(), new HistoryPage()];
}
