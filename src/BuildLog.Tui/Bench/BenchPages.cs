using BuildLog.Data;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Bench;

#pragma warning disable CA2000 // The screen the pages are added to disposes them.

/// <summary>The pages below the strip, in the order of their digits.</summary>
internal static class BenchPages
{
    /// <summary>All of them. A new page that asks the record gets its line here.</summary>
    public static IReadOnlyList<VehiclePage> All(Shop shop, TimeProvider clock, UnitSystem units, WhatIf whatIf) =>
    [
        .. OfTheModel(),
        new OptionsPage(new OptionsActs(shop, clock, units)),
        new WantedPage(new WantedActs(shop, clock)),
        new PlansPage(new PlansActs(shop, clock, whatIf)),
    ];

    /// <summary>Those that show nothing but what the vehicle's model says.</summary>
    public static IReadOnlyList<VehiclePage> OfTheModel() => [new FindingsPage(), new SpeedsPage(), new MeasuredPage(), new GoalPage(), new HistoryPage()];
}
