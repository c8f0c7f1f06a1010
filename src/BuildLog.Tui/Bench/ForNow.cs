using BuildLog.Tui.Options;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Bench;

/// <summary>What is chosen on the bench and stored nowhere, shared by the pages and the acts of the bench. It lasts as long as the program.</summary>
public sealed class ForNow
{
    /// <summary>The units to show.</summary>
    public UnitSystem Units { get; internal set; } = UnitSystem.Metric;

    /// <summary>What is tried without being stored.</summary>
    public WhatIf WhatIf { get; } = new();

    /// <summary>What the table of speeds shows.</summary>
    public SpeedsWish Speeds { get; } = new();

    /// <summary>What the page of options searches, and the sheet that names its ways out.</summary>
    public SearchWish Search { get; init; } = new();
}
