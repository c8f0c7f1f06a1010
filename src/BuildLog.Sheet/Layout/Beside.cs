namespace BuildLog.Sheet.Layout;

/// <summary>Blocks at the left and a plate at the right of them, both from the same height down.</summary>
internal sealed class Beside(Plate plate, double plateWidth, double plateHeight, params IReadOnlyList<Block> blocks) : Block
{
    private const double Gap = 18;

    public override IEnumerable<FlowItem> Items(double width)
    {
        // The plate takes no height of its own, so the text starts beside its top.
        yield return new FlowItem(0, (pen, x, y) => plate.Place(pen, new Drawing.Box(x + width - plateWidth, y, plateWidth, plateHeight)))
        {
            SpaceBefore = SpaceBefore,
            KeepWithNext = true,
        };

        var used = 0.0;
        foreach (var item in blocks.SelectMany(block => block.Items(width - plateWidth - Gap)))
        {
            yield return item with { SpaceBefore = used == 0 ? 0 : item.SpaceBefore, KeepWithNext = item.KeepWithNext || used < plateHeight };
            used += item.Height + (used == 0 ? 0 : item.SpaceBefore);
        }

        if (used < plateHeight) yield return new FlowItem(plateHeight - used, (_, _, _) => { });
    }
}
