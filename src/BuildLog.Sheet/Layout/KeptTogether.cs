namespace BuildLog.Sheet.Layout;

/// <summary>Blocks that stay on one page if they fit one.</summary>
internal sealed class KeptTogether(params IReadOnlyList<Block> blocks) : Block
{
    public override IEnumerable<FlowItem> Items(double width)
    {
        List<FlowItem> items = [.. blocks.SelectMany(block => block.Items(width))];
        return items.Select((item, i) => i < items.Count - 1 ? item with { KeepWithNext = true } : item);
    }
}
