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
    /// <param name="units">The units to show; null for metric ones.</param>
    /// <param name="forNow">What is chosen on the bench, shared with its acts; null for a bench of its own.</param>
    public static IReadOnlyList<VehiclePage> All(Shop shop, TimeProvider clock, UnitSystem? units = null, ForNow? forNow = null)
    {
        var (shown, chosen) = (units ?? UnitSystem.Metric, forNow ?? new());
        return
        [
            new FindingsPage(),
            new SpeedsPage(new(shop, clock, shown, chosen.Speeds)),
            new MeasuredPage(new SessionActs(shop, clock, shown)),
            new GoalPage(),
            new HistoryPage(new FitmentActs(shop, clock)),
            new JobsPage(new JobsActs(shop, clock)),
            new PapersPage(new PapersActs(shop)),
            new DecisionsPage(new DecisionsActs(shop, clock)),
            new ChangesPage(new ChangesActs(shop, clock)),
            new OptionsPage(new OptionsActs(shop, clock, shown, chosen.Search)),
            new WantedPage(new WantedActs(shop, clock, shown)),
            new PlansPage(new PlansActs(shop, clock, chosen.WhatIf)),
        ];
    }
}

#pragma warning restore CA2000
