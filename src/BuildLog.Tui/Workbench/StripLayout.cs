using BuildLog.Gearing.Checks;
namespace BuildLog.Tui.Workbench;

/// <summary>A box of the strip in its place, in cells.</summary>
internal sealed record PlacedBox(DrivelineBox Box, int X, int Y, int Width);

/// <summary>The joint before a box. A branch's first joint leaves the trunk from above.</summary>
internal sealed record PlacedJoint(Verdict? Verdict, int X, int Y, int Width, bool FromAbove);

/// <summary>How a box is drawn.</summary>
internal enum BoxManner
{
    /// <summary>A frame that holds caption and source, part and number inside.</summary>
    Framed,

    /// <summary>A bar at the left, the same words.</summary>
    Plain,

    /// <summary>A bar at the left, caption and source above the number; the line below the strip names the part.</summary>
    TwoLines,
}

/// <summary>Where the boxes of a driveline stand in a given space. Plain numbers, so that it can be tested without a terminal.</summary>
internal sealed record StripLayout(IReadOnlyList<PlacedBox> Boxes, IReadOnlyList<PlacedJoint> Joints, BoxManner Manner, int RowHeight, int Height)
{
    private const int VerdictJoint = 5; // as wide as the widest verdict word
    private const int PlainJoint = 2;
    private const int WidestBox = 34;
    private const int NarrowestBox = 11;
    private const int NarrowestTwoLines = 16; // caption and source side by side
    private const int NarrowestFrame = 14;
    private const int NarrowestThreeLines = 16;

    /// <summary>Tries the roomiest arrangement first: framed boxes in one run, then the same without frames, then more rows, and last of all boxes of two lines.</summary>
    public static StripLayout For(DrivelineModel driveline, int width, int maxHeight)
    {
        var oneRun = OneRun(driveline);
        var ownRows = OwnRows(driveline, width, NarrowestBox);
        return Place(oneRun, width, BoxManner.Framed, NarrowestFrame, maxHeight)
            ?? Place(oneRun, width, BoxManner.Plain, NarrowestBox, maxHeight)
            ?? Place(ownRows, width, BoxManner.Framed, NarrowestFrame, maxHeight)
            ?? Place(ownRows, width, BoxManner.Plain, NarrowestBox, maxHeight)
            ?? Place(OwnRows(driveline, width, NarrowestTwoLines), width, BoxManner.TwoLines, 0, int.MaxValue)!;
    }

    // The trunk runs on into the first branch; further branches stand below it, in the same columns.
    private static List<Row> OneRun(DrivelineModel driveline)
    {
        var first = driveline.Trunk.Concat(driveline.Branches.Count > 0 ? driveline.Branches[0] : []).ToList();
        return [new Row(first, 0, 0), .. driveline.Branches.Skip(1).Select(branch => new Row(branch, driveline.Trunk.Count, 0))];
    }

    // The trunk and the branches in rows of their own; a chain too long for the width goes on in the next row.
    private static List<Row> OwnRows(DrivelineModel driveline, int width, int narrowest)
    {
        var isForked = driveline.Branches.Count > 1;
        var trunk = isForked ? driveline.Trunk : OneRun(driveline)[0].Boxes;
        var perRow = Math.Max(1, (width + VerdictJoint) / (narrowest + VerdictJoint));
        return
        [
            .. Spread(trunk, perRow).Select(boxes => new Row(boxes, 0, 0)),
            .. driveline.Branches.Where(_ => isForked).SelectMany(branch => Spread(branch, perRow)).Select(boxes => new Row(boxes, 0, 1)),
        ];
    }

    private static IEnumerable<IReadOnlyList<DrivelineBox>> Spread(IReadOnlyList<DrivelineBox> chain, int perRow)
    {
        if (chain.Count == 0) return [];
        var rows = (chain.Count + perRow - 1) / perRow;
        return chain.Chunk((chain.Count + rows - 1) / rows);
    }

    private static StripLayout? Place(List<Row> rows, int width, BoxManner manner, int narrowest, int maxHeight)
    {
        var columns = rows.GroupBy(row => row.Group).ToDictionary(group => group.Key, group => Columns.For([.. group], rows[0], width));
        var boxWidth = columns.Values.Min(column => column.BoxWidth);
        var rowHeight = manner switch
        {
            BoxManner.TwoLines => 2,
            BoxManner.Plain when boxWidth >= NarrowestThreeLines => 3,
            _ => 4, // a frame, or a source in a line of its own
        };
        var height = rows.Count * rowHeight;
        if (boxWidth < narrowest || height > maxHeight) return null;

        var boxes = new List<PlacedBox>();
        var joints = new List<PlacedJoint>();
        for (var r = 0; r < rows.Count; r++)
        {
            var row = rows[r];
            var column = columns[row.Group];
            for (var i = 0; i < row.Boxes.Count; i++)
            {
                var (x, joint) = (column.X(row.Indent + i), column.Joints[row.Indent + i]);
                boxes.Add(new PlacedBox(row.Boxes[i], x, r * rowHeight, column.BoxWidth));
                if (r > 0 || i > 0) joints.Add(new PlacedJoint(row.Boxes[i].JointBefore, x - joint, r * rowHeight, joint, FromAbove: i == 0));
            }
        }

        return new StripLayout(boxes, joints, manner, rowHeight, height);
    }

    /// <summary>Rows of one group share their columns, so that boxes of one kind stand below each other.</summary>
    private sealed record Row(IReadOnlyList<DrivelineBox> Boxes, int Indent, int Group);

    /// <summary>A joint is as wide as the widest verdict that hangs at it in any row of the group.</summary>
    private sealed record Columns(int[] Joints, int BoxWidth)
    {
        public static Columns For(List<Row> rows, Row first, int width)
        {
            var joints = new int[rows.Max(row => row.Indent + row.Boxes.Count)];
            foreach (var row in rows)
            {
                for (var i = 0; i < row.Boxes.Count; i++)
                {
                    if (row == first && i == 0) continue; // nothing stands before the engine
                    var needed = row.Boxes[i].JointBefore is null ? PlainJoint : VerdictJoint;
                    joints[row.Indent + i] = Math.Max(joints[row.Indent + i], needed);
                }
            }

            return new Columns(joints, Math.Clamp((width - joints.Sum()) / Math.Max(1, joints.Length), 0, WidestBox));
        }

        public int X(int column) => Joints.Take(column + 1).Sum() + (column * BoxWidth);
    }
}
