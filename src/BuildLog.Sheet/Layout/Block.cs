namespace BuildLog.Sheet.Layout;

/// <summary>A piece of the sheet that knows how to become flow items when told how wide the page is.</summary>
internal abstract class Block
{
    public double SpaceBefore { get; init; }

    public abstract IEnumerable<FlowItem> Items(double width);
}
