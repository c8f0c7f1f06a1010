using BuildLog.Gearing.Checks;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.WhatNow;

/// <summary>One vehicle on the first page: where it stands and what it needs of the shop.</summary>
/// <param name="State">In the shop's words.</param>
/// <param name="Counts">What its findings come to.</param>
public sealed record WhatNowRow(long VehicleId, string Name, string State, VerdictCounts Counts)
{
    /// <summary>Engine speed at the cruise goal, with ± and unit; empty where it cannot be said.</summary>
    public string Cruise { get; init; } = "";

    /// <summary>The goal it is judged against; empty without one.</summary>
    public string CruiseWanted { get; init; } = "";

    /// <summary>The worst finding that asks for something, such as "clash: cruise engine speed"; empty for none.</summary>
    public string Worst { get; init; } = "";

    /// <summary>What clashes and what cannot be judged, the worst first, in whole sentences.</summary>
    public IReadOnlyList<WhatNowFinding> Findings { get; init; } = [];

    /// <summary>The job to take up next; empty where nothing is open.</summary>
    public string NextJob { get; init; } = "";

    /// <summary>What else can be taken up, in its order.</summary>
    public IReadOnlyList<string> FurtherJobs { get; init; } = [];

    /// <summary>What is late, the longest first, each a clause.</summary>
    public IReadOnlyList<string> Late { get; init; } = [];

    /// <summary>What it waits for: a part wanted, work that is away, a day to come.</summary>
    public IReadOnlyList<string> WaitsFor { get; init; } = [];

    /// <summary>Days since anything was done on it; null before anything was.</summary>
    public int? IdleDays { get; init; }

    /// <summary>Spent so far; empty for nothing.</summary>
    public string Spent { get; init; } = "";

    /// <summary>Worked so far; empty for nothing.</summary>
    public string Hours { get; init; } = "";

    /// <summary>Handed over, laid up: it asks nothing by itself.</summary>
    public bool IsAtRest { get; init; }

    /// <summary>Whether the shop should look at it: something is late, clashes, or cannot be judged.</summary>
    public bool NeedsSomebody => Late.Count > 0 || (!IsAtRest && (Counts.Clash > 0 || Counts.Open > 0));

    /// <summary>The most pressing thing in one clause.</summary>
    public string Pressing =>
        Late.Count > 0 ? Late[0]
        : !IsAtRest && Counts.Clash > 0 && Worst.Length > 0 ? Worst
        : WaitsFor.Count > 0 ? WaitsFor[0]
        : NextJob.Length > 0 ? NextJob
        : IsAtRest ? ""
        : Worst.Length > 0 ? Worst
        : Spoken("no job is open");
}

/// <summary>A finding that asks for something.</summary>
/// <param name="Says">The matter, and what is said of it with its numbers.</param>
/// <param name="Cure">What would cure or settle it; empty where nobody can say.</param>
public sealed record WhatNowFinding(Verdict Verdict, string Says, string Cure);

/// <summary>The vehicles in the order in which they need somebody.</summary>
public static class WhatNowOrder
{
    /// <summary>What is late, then what clashes, then what waits or cannot be judged, then what was left alone the longest; what is at rest last.</summary>
    public static IReadOnlyList<WhatNowRow> Sorted(IEnumerable<WhatNowRow> rows) =>
    [
        .. rows
            .OrderByDescending(row => row.Late.Count)
            .ThenBy(row => row.IsAtRest)
            .ThenByDescending(row => row.Counts.Clash)
            .ThenByDescending(row => row.WaitsFor.Count)
            .ThenByDescending(row => row.Counts.Open)
            .ThenByDescending(row => row.IdleDays ?? 0)
            .ThenBy(row => row.Name, StringComparer.CurrentCultureIgnoreCase),
    ];

    /// <summary>Those in which every word typed occurs: in the name, the state, what is late, waited for or next.</summary>
    public static IReadOnlyList<WhatNowRow> Matching(IReadOnlyList<WhatNowRow> rows, string typed)
    {
        var words = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return [.. rows.Where(row => words.All(word => Texts(row).Any(text => text.Contains(word, StringComparison.CurrentCultureIgnoreCase))))];
    }

    private static IEnumerable<string> Texts(WhatNowRow row) => [row.Name, row.State, row.Counts.Summary(), row.NextJob, row.Worst, .. row.Late, .. row.WaitsFor];
}
