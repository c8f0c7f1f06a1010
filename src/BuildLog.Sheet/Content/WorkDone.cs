namespace BuildLog.Sheet.Content;

/// <summary>Work with its hours, job by job.</summary>
/// <param name="Rows">In the order to print.</param>
/// <param name="Total">All hours together: "212 h".</param>
public sealed record WorkDone(IReadOnlyList<WorkRow> Rows, string? Total);

/// <summary>One job or one day of it.</summary>
public sealed record WorkRow(string Date, string What, string? Who, string? Hours);

/// <summary>Money spent, receipt by receipt.</summary>
/// <param name="Rows">In the order to print.</param>
/// <param name="Totals">One sum a currency: "EUR 4 310.50".</param>
public sealed record MoneySpent(IReadOnlyList<CostRow> Rows, IReadOnlyList<string> Totals);

/// <summary>One expense.</summary>
public sealed record CostRow(string Date, string What, string? From, string? Receipt, string? Amount);
