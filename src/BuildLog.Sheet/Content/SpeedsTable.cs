namespace BuildLog.Sheet.Content;

/// <summary>Gears against speeds. The first column names the row.</summary>
/// <param name="Heads">Column heads with their units.</param>
/// <param name="Rows">One list of cell texts a row.</param>
/// <param name="Note">What the table rests on, printed below it.</param>
public sealed record SpeedsTable(IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows, string? Note = null);
