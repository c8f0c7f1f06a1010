using BuildLog.Tui.Shell;

namespace BuildLog.Tui.WhatNow;

/// <summary>What the first page says about the chosen vehicle.</summary>
internal static class WhatNowText
{
    public static IReadOnlyList<TextLine> Of(WhatNowRow row)
    {
        var lines = new List<TextLine> { TextLine.Of(new TextRun(row.Name, Tone.Strong), new TextRun($"  {row.State}, {row.Counts.Summary()}", Tone.Quiet)) };
        foreach (var late in row.Late) Add(lines, "Late     ", late, Tone.Clash);
        foreach (var wait in row.WaitsFor) Add(lines, "Waits    ", wait);
        Add(lines, "Finding  ", row.Worst);
        Add(lines, "Next job ", row.NextJob);
        Add(lines, "Cruise   ", Cruise(row));
        Add(lines, "Idle     ", Idle(row));
        Add(lines, "So far   ", string.Join(", ", new[] { row.Hours, row.Spent }.Where(text => text.Length > 0)));
        return lines;
    }

    /// <summary><c>3670 ± 55 rev/min, wanted 2500 to 3000 rev/min</c>.</summary>
    public static string Cruise(WhatNowRow row) => (row.Cruise, row.CruiseWanted) switch
    {
        ("", "") => "",
        ("", var wanted) => $"cannot be said yet, wanted {wanted}",
        (var cruise, "") => cruise,
        var (cruise, wanted) => $"{cruise}, wanted {wanted}",
    };

    public static string Idle(WhatNowRow row) => row.IdleDays switch
    {
        null => "",
        0 => "worked on today",
        1 => "1 day",
        { } days => FormattableString.Invariant($"{days} days"),
    };

    private static void Add(List<TextLine> lines, string name, string text, Tone tone = Tone.Plain)
    {
        if (text.Length > 0) lines.Add(TextLine.Of(new TextRun(name, Tone.Quiet), new TextRun(text, tone)));
    }
}
