using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Layout;

/// <summary>Plates of one height beside each other, each as wide as if the row were full.</summary>
internal sealed class PlateRow(double height, int columns, IReadOnlyList<Plate> plates) : Block
{
    private const double Gap = 14;

    public override IEnumerable<FlowItem> Items(double width)
    {
        var each = (width - Gap * (columns - 1)) / columns;
        yield return new FlowItem(height, (pen, x, y) =>
        {
            foreach (var (i, plate) in plates.Index()) plate.Place(pen, new Box(x + i * (each + Gap), y, each, height));
        })
        {
            SpaceBefore = SpaceBefore,
        };
    }
}
