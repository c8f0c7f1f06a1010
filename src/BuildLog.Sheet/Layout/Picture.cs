namespace BuildLog.Sheet.Layout;

/// <summary>One plate across the page.</summary>
internal sealed class Picture(double height, Plate plate) : Block
{
    public override IEnumerable<FlowItem> Items(double width)
    {
        yield return new FlowItem(height, (pen, x, y) => plate.Place(pen, new Drawing.Box(x, y, width, height))) { SpaceBefore = SpaceBefore };
    }
}
