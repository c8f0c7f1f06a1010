using BuildLog.Sheet.Content;

namespace BuildLog.Tui.Workbench;

/// <summary>Road speeds: one headline, the table of gears, the sawtooth.</summary>
/// <param name="Headline">The one line to remember: speed per 1000 rev/min in top, cruise engine speed.</param>
/// <param name="Columns">Headings after the gear's name: "ratio", "1000", "2000", …</param>
/// <param name="Chart">Null where a circumference or ratio is missing.</param>
/// <param name="Missing">Said instead of the table when it cannot be computed: what to measure first.</param>
public sealed record SpeedsModel(
    string Headline,
    IReadOnlyList<string> Columns,
    IReadOnlyList<SpeedsRow> Rows,
    Sawtooth? Chart = null,
    string? Missing = null)
{
    /// <summary>What the marks at columns mean; null where none is marked.</summary>
    public string? Footnote { get; init; }

    /// <summary>Computes the curves of reserve and hills when they are looked at; null inside where a number is missing.</summary>
    public Func<PullCharts?> Pull { get; init; } = () => null;

    /// <summary>Said where those curves would stand: what they need.</summary>
    public string PullMissing { get; init; } = Spoken("Reserve and hills cannot be said yet.");

    public static SpeedsModel Without(string missing) => new("", [], [], null, missing);
}

/// <summary>What is left to pull with over road speed, in each gear.</summary>
/// <param name="Reserve">Force left on the level.</param>
/// <param name="Hill">The steepest hill it holds.</param>
public sealed record PullCharts(CurveChart Reserve, CurveChart Hill);

/// <summary>One gear: its name and one cell for each column.</summary>
public sealed record SpeedsRow(string Gear, IReadOnlyList<string> Cells);
