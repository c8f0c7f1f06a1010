using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Layout;

/// <summary>What tells one kind of table from another.</summary>
internal sealed record TableLook
{
    public double PadX { get; init; } = 4;

    public double PadY { get; init; } = 2.1;

    public bool ShowsHead { get; init; } = true;

    public TextStyle Head { get; init; } = TypeScale.TableHead;

    /// <summary>The first cell of each row is the head of its row.</summary>
    public bool FirstColumnNamesRow { get; init; } = true;

    /// <summary>For lines to write on: the gap between them, below every cell but the first. None for one rule across the row.</summary>
    public double WritingGap { get; init; }

    /// <summary>A rule between columns.</summary>
    public bool ColumnRules { get; init; }

    /// <summary>Room to write by hand.</summary>
    public double LeastRowHeight { get; init; }

    /// <summary>All rows stay on one page if they fit one.</summary>
    public bool KeepTogether { get; init; }
}
