using BuildLog.Sheet.Papers;

namespace BuildLog.Tui.Papers;

/// <summary>An account of a vehicle: for paper, and the same lines as plain cells for a spreadsheet.</summary>
public sealed record Account(PaperContent Paper, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows);
