namespace BuildLog.Tui.Workbench;

/// <summary>The measurement sessions and road tests of a vehicle, newest first.</summary>
public sealed record MeasurementsModel(IReadOnlyList<SessionRow> Rows);

/// <summary>One session or road test: the row, and what stands below it when chosen.</summary>
/// <param name="Method">"turn count", "roll-out", …</param>
/// <param name="Subject">The part that was measured.</param>
/// <param name="Result">With ± and unit: "4.08 ± 0.02".</param>
/// <param name="Conditions">Who helped, pressure, loaded or not; one short clause each.</param>
/// <param name="Readings">The readings, as whoever reads them writes numbers.</param>
/// <param name="Interpretation">What follows: interval, candidates, suspect readings.</param>
/// <param name="Budget">What the uncertainty is made of, largest first.</param>
public sealed record SessionRow(
    long Id,
    string Date,
    string Method,
    string Subject,
    string Result,
    IReadOnlyList<string>? Conditions = null,
    IReadOnlyList<string>? Readings = null,
    IReadOnlyList<string>? Interpretation = null,
    IReadOnlyList<BudgetShare>? Budget = null)
{
    /// <summary>A road test, which is no session.</summary>
    public bool IsDrive { get; init; }
}

/// <summary>One line of an uncertainty budget.</summary>
/// <param name="Share">Share of the variance, 0 to 1.</param>
public sealed record BudgetShare(string Input, double Share);
