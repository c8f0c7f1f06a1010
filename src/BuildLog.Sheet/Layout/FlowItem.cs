using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Layout;

/// <summary>Draws an item with its top left corner at x, y.</summary>
internal delegate void DrawAt(Pen pen, double x, double y);

/// <summary>The smallest thing that moves from page to page: a line of text, a table row, a chart.</summary>
internal sealed record FlowItem(double Height, DrawAt Draw)
{
    public double SpaceBefore { get; init; }

    /// <summary>Must not be the last thing on a page.</summary>
    public bool KeepWithNext { get; init; }

    /// <summary>Drawn first when this item starts a page: a table's head.</summary>
    public FlowItem? RepeatOnNewPage { get; init; }

    /// <summary>Cuts the item to fit a height; null when not even one line fits.</summary>
    public Func<double, FlowSplit?>? Split { get; init; }

    /// <summary>Tags that begin before the item, outermost first. They may close on a later page.</summary>
    public IReadOnlyList<TagInfo> Opens { get; init; } = [];

    /// <summary>How many tags end after the item.</summary>
    public int Closes { get; init; }

    /// <summary>The height at the top of a fresh page, with what is repeated there.</summary>
    public double FreshHeight => Height + (RepeatOnNewPage?.Height ?? 0);
}

internal sealed record FlowSplit(FlowItem Head, FlowItem Tail);
