using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Layout;

/// <summary>A headed part of the sheet, with its entry in the outline.</summary>
internal sealed class Section(string title, params IReadOnlyList<Block> blocks) : Block
{
    private const double GapAbove = 9.5;
    private const double GapBelowTitle = 3;

    /// <summary>Keeps the whole section on one page if it fits one.</summary>
    public bool KeepTogether { get; init; }

    public override IEnumerable<FlowItem> Items(double width)
    {
        var heading = new Paragraph(title, TypeScale.Section)
        {
            Tag = Tag.H2,
            BookmarkLevel = 1,
            KeepWithNext = true,
            SpaceBefore = GapAbove,
        };
        var content = blocks.SelectMany(block => block.Items(width)).ToList();
        content[0] = content[0] with { SpaceBefore = content[0].SpaceBefore + GapBelowTitle };

        List<FlowItem> items = [.. heading.Items(width), .. content];
        items[0] = items[0] with { Opens = [new TagInfo(Tag.Sect), .. items[0].Opens] };
        items[^1] = items[^1] with { Closes = items[^1].Closes + 1 };

        return KeepTogether ? items.Select((item, i) => i < items.Count - 1 ? item with { KeepWithNext = true } : item) : items;
    }
}
