namespace BuildLog.Tui.Shell;

/// <summary>One column of a <see cref="RowList"/>.</summary>
/// <param name="Width">Cells; more where its text needs it and there is room. 0, of one column, takes what the others leave.</param>
/// <param name="Right">Numbers stand at the right.</param>
/// <param name="FromWidth">Left out while the list is narrower than this.</param>
/// <param name="BelowWidth">Left out from this width on, where a roomier one stands in its place.</param>
internal sealed record RowColumn(string Heading, int Width = 0, bool Right = false, int FromWidth = 0, int BelowWidth = int.MaxValue);
