namespace BuildLog.Tui.Changes;

/// <summary>The changes that speak of a vehicle or of its parts, the latest first.</summary>
public sealed record ChangesModel(IReadOnlyList<ChangeLine> Rows);

/// <summary>One change.</summary>
/// <param name="When">Day and time of this machine.</param>
/// <param name="Did">What was done.</param>
/// <param name="Machine">Where.</param>
/// <param name="Fields">Each value before and after.</param>
/// <param name="IsUndone">A later change has taken it back.</param>
public sealed record ChangeLine(long Id, string When, string Did, string Machine, IReadOnlyList<ChangedValue> Fields, bool IsUndone);

/// <summary>One value; null where there was or is none.</summary>
public sealed record ChangedValue(string Name, string? Before, string? After);
