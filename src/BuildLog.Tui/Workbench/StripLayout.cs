namespace BuildLog.Tui.Workbench;

/// <summary>A box of the strip in its place, in cells.</summary>
internal sealed record PlacedBox(DrivelineBox Box, int X, int Y, int Width);

/// <summary>The joint before a box. A branch's first joint leaves the trunk from above.</summary>
internal sealed record PlacedJoint(ShownVerdict? Verdict, int X, int Y, int Width, bool FromAbove);

/// <summary>Where the boxes of a driveline stand in a given space. Plain numbers, so that it can be tested without a terminal.</summary>
internal sealed record StripLayout(IReadOnlyList<PlacedBox> Boxes, IReadOnlyList<PlacedJoint> Joints, bool Framed, int RowHeight, int Height)
{
    private const int VerdictJoint = 5; // as wide as the widest verdict word
    private const int PlainJoint = 2;
    private const int WidestBox = 24;
    private const int NarrowestBox = 11;
    private const int NarrowestFrame = 14;

    /// <summary>Tries the roomiest arrangement first: framed boxes in one run, then the same without frames, then more rows.</summary>
    public static StripLayout For(DrivelineModel driveline, int width, int maxHeight)
    {
        var oneRun = OneRun(driveline);
        var ownRows = OwnRows(driveline, width);
        return Place(oneRun, width, framed: true, NarrowestFrame, maxHeight)
            ?? Place(ownRows, width, framed: true, NarrowestFrame, maxHeight)
            ?? Place(oneRun, width, framed: false, NarrowestBox, maxHeight)
            ?? Place(ownRows, width, framed: false, NarrowestBox, maxHeight)
            ?? Place(ownRows, width, framed: false, 1, int.MaxValue)!;
    }

    // The trunk runs on into the first branch; further branches stand below it, in the same columns.
    private static List<Row> OneRun(DrivelineModel driveline)
    {
        var first = driveline.Trunk.Concat(driveline.Branches.Count > 0 ? driveline.Branches[0] : []).ToList();
        return [new Row(first, 0), .. driveline.Branches.Skip(1).Select(branch => new Row(branch, driveline.Trunk.Count))];
    }

    // The trunk, and each branch, in rows of their own; a chain too long for the width goes on in the next row.
    private static List<Row> OwnRows(DrivelineModel driveline, int width)
    {
        var chains = driveline.Branches.Count > 1
            ? [driveline.Trunk, .. driveline.Branches]
            : new List<IReadOnlyList<DrivelineBox>> { OneRun(driveline)[0].Boxes };
        var perRow = Math.Max(1, (width + VerdictJoint) / (NarrowestBox + VerdictJoint));
        return [.. chains.SelectMany(chain => Spread(chain, perRow)).Select(boxes => new Row(boxes, 0))];
    }

    private static IEnumerable<IReadOnlyList<DrivelineBox>> Spread(IReadOnlyList<DrivelineBox> chain, int perRow)
    {
        if (chain.Count == 0) return [];
        var rows = (chain.Count + perRow - 1) / perRow;
        return chain.Chunk((chain.Count + rows - 1) / rows);
    }

    private static StripLayout? Place(List<Row> rows, int width, bool framed, int narrowest, int maxHeight)
    {
        var columns = rows.Max(row => row.Indent + row.Boxes.Count);
        var joints = JointWidths(rows, columns);
        var boxWidth = Math.Min(WidestBox, (width - joints.Sum()) / Math.Max(1, columns));
        var rowHeight = framed || boxWidth < 16 ? 4 : 3; // narrow boxes say their source in a line of its own
        var height = rows.Count * rowHeight;
        if (boxWidth < narrowest || height > maxHeight) return null;

        var boxes = new List<PlacedBox>();
        var placed = new List<PlacedJoint>();
        for (var r = 0; r < rows.Count; r++)
        {
            for (var i = 0; i < rows[r].Boxes.Count; i++)
            {
                var column = rows[r].Indent + i;
                var x = joints.Take(column + 1).Sum() + (column * boxWidth);
                var box = rows[r].Boxes[i];
                boxes.Add(new PlacedBox(box, x, r * rowHeight, boxWidth));
                if (joints[column] > 0 && (r > 0 || i > 0))
                    placed.Add(new PlacedJoint(box.JointBefore, x - joints[column], r * rowHeight, joints[column], FromAbove: i == 0));
            }
        }

        return new StripLayout(boxes, placed, framed, rowHeight, height);
    }

    // A joint is as wide as the widest verdict that hangs at it in any row.
    private static int[] JointWidths(List<Row> rows, int columns)
    {
        var widths = new int[columns];
        for (var r = 0; r < rows.Count; r++)
        {
            for (var i = 0; i < rows[r].Boxes.Count; i++)
            {
                if (r == 0 && i == 0) continue;
                var needed = rows[r].Boxes[i].JointBefore is null ? PlainJoint : VerdictJoint;
                var column = rows[r].Indent + i;
                widths[column] = Math.Max(widths[column], needed);
            }
        }

        return widths;
    }

    private sealed record Row(IReadOnlyList<DrivelineBox> Boxes, int Indent);
}
