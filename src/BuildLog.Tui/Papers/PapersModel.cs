namespace BuildLog.Tui.Papers;

/// <summary>The photos, receipts and papers of a vehicle, of what speaks of it and of its parts, as they were added.</summary>
public sealed record PapersModel(IReadOnlyList<PaperRow> Rows);

/// <summary>One file.</summary>
/// <param name="About">What it is about where that is not the vehicle itself; else empty.</param>
/// <param name="Kind">Such as "image/jpeg".</param>
/// <param name="Size">Such as "1.2 MB".</param>
/// <param name="Taken">As typed; empty for not known.</param>
/// <param name="Trouble">A sentence where the file is missing or no longer what was put in; null for a sound one.</param>
public sealed record PaperRow(long Id, string FileName, string Caption, string About, string Kind, string Size, string Taken, string? Trouble);
