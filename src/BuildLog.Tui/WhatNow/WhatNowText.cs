using BuildLog.Gearing.Checks;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.WhatNow;

/// <summary>What the first page says about the chosen vehicle.</summary>
internal static class WhatNowText
{
    private const double DaysInAYear = 365.25;
    private const double DaysInAMonth = DaysInAYear / 12;
    private const int MonthsUntil = 15;

    public static IReadOnlyList<TextLine> Of(WhatNowRow row)
    {
        var lines = new List<TextLine> { TextLine.Of(new TextRun(row.Name, Tone.Strong), new TextRun($"  {row.State}, {row.Counts.Summary()}", Tone.Quiet)) };
        foreach (var late in row.Late) Add(lines, Spoken("Late     "), late, Tone.Clash);
        foreach (var wait in row.WaitsFor) Add(lines, Spoken("Waits    "), wait);
        Add(lines, Spoken("Finding  "), row.Worst);
        Add(lines, Spoken("Next job "), row.NextJob);
        Add(lines, Spoken("Cruise   "), Cruise(row));
        Add(lines, Spoken("Idle     "), Idle(row));
        Add(lines, Spoken("So far   "), string.Join(", ", new[] { row.Hours, row.Spent }.Where(text => text.Length > 0)));
        return lines;
    }

    /// <summary>The same, and below it what is behind the counts of its findings and what can be done besides.</summary>
    public static IReadOnlyList<TextLine> InFull(WhatNowRow row)
    {
        var lines = new List<TextLine>(Of(row));
        if (row.Findings.Count + row.FurtherJobs.Count > 0) lines.Add(TextLine.Empty);
        foreach (var finding in row.Findings)
        {
            lines.Add(TextLine.Of(new TextRun($"{finding.Verdict.Sign()} {finding.Verdict.InWords()}  ", finding.Verdict.Tone()), new TextRun(finding.Says)));
            Add(lines, Spoken("Cure     "), finding.Cure);
        }

        foreach (var job in row.FurtherJobs) Add(lines, Spoken("Then     "), job);
        return lines;
    }

    /// <summary><c>3670 ± 55 rev/min, wanted 2500 to 3000 rev/min</c>.</summary>
    public static string Cruise(WhatNowRow row) => (row.Cruise, row.CruiseWanted) switch
    {
        ("", "") => "",
        ("", var wanted) => Spoken($"cannot be said yet, wanted {wanted}"),
        (var cruise, "") => cruise,
        var (cruise, wanted) => Spoken($"{cruise}, wanted {wanted}"),
    };

    /// <summary>How long nothing was done on it: in days while that says something, then in months and years.</summary>
    public static string Idle(WhatNowRow row) => row.IdleDays switch
    {
        null => "",
        0 => Spoken("worked on today"),
        1 => Spoken("1 day"),
        { } days and < 60 => Spoken($"{days} days"),
        { } days when days < MonthsUntil * DaysInAMonth => Spoken($"{days / DaysInAMonth:0} months"),
        { } days when days < 2 * DaysInAYear => Spoken("over a year"),
        { } days when days % DaysInAYear < 2 * DaysInAMonth => Spoken($"{Math.Floor(days / DaysInAYear):0} years"),
        { } days => Spoken($"over {Math.Floor(days / DaysInAYear):0} years"),
    };

    private static void Add(List<TextLine> lines, string name, string text, Tone tone = Tone.Plain)
    {
        if (text.Length > 0) lines.Add(TextLine.Of(new TextRun(name, Tone.Quiet), new TextRun(text, tone)));
    }
}
