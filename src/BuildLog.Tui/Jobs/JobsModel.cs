namespace BuildLog.Tui.Jobs;

/// <summary>The work on a vehicle: its jobs, what is due, and what it came to.</summary>
/// <param name="Total">Hours and money so far, and the budget, in one line.</param>
public sealed record JobsModel(IReadOnlyList<JobRow> Rows, string Total);

/// <summary>One line of the page.</summary>
/// <param name="Kind">Whether it is a job, a deadline, or the costs that belong to no job.</param>
/// <param name="Id">Of the job or deadline.</param>
/// <param name="State">"to do", "blocked", "done", "late".</param>
/// <param name="Due">By when; null for no day.</param>
/// <param name="Hours">Worked on it; empty for none.</param>
/// <param name="Cost">Spent on it; empty for nothing.</param>
/// <param name="Lines">What stands below it when chosen.</param>
public sealed record JobRow(JobRowKind Kind, long Id, string Title, string State, DateOnly? Due, string Hours, string Cost, IReadOnlyList<string> Lines)
{
    /// <summary>It is due and its day is over.</summary>
    public bool IsLate { get; init; }

    public bool IsOver { get; init; }
}

public enum JobRowKind
{
    Job,
    Deadline,
    OtherCosts,
}
