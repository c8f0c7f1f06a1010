namespace BuildLog.Sheet.Layout;

/// <summary>What tells one kind of table from another.</summary>
internal sealed record TableLook
{
    public double PadX { get; init; } = 4;

    public double PadY { get; init; } = 2.4;

    public bool ShowsHead { get; init; } = true;

    /// <summary>The first cell of each row is the head of its row.</summary>
    public bool FirstColumnNamesRow { get; init; } = true;

    /// <summary>A rule below each row.</summary>
    public bool RowRules { get; init; } = true;

    /// <summary>A rule between columns.</summary>
    public bool ColumnRules { get; init; }

    /// <summary>Room to write by hand.</summary>
    public double LeastRowHeight { get; init; }

    /// <summary>All rows stay on one page if they fit one.</summary>
    public bool KeepTogether { get; init; }
}
