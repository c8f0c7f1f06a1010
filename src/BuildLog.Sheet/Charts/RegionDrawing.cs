using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Charts;

/// <summary>The map of axle against tyre: a box for every pair, filled where it fits, with the letter of its verdict, so that it reads without colour.</summary>
internal static class RegionDrawing
{
    private const double RowHeight = 11;
    private const double Heads = 34;
    private const double Below = 26;
    private const string Apart = "    ";

    public static double HeightOf(RegionMap map) => (map.Cells.Count * RowHeight) + Below;

    public static Plate Of(RegionMap map) => new(
        PlainText.Line(Spoken($"Map of axle ratio against rolling circumference from {map.Left} to {map.Right}: {string.Join("; ", map.Rows.Zip(map.Cells, (row, cells) => $"{row} {cells}"))}.")),
        (pen, box) => Draw(pen, box, map),
        map);

    private static void Draw(Pen pen, Box box, RegionMap map)
    {
        var columns = map.Cells.Select(row => row.Length).DefaultIfEmpty(1).Max();
        var width = (box.Width - Heads) / Math.Max(1, columns);
        for (var row = 0; row < map.Cells.Count; row++)
        {
            var y = box.Y + (row * RowHeight);
            pen.Text(box.X, y + 8, Short(map.Rows.ElementAtOrDefault(row) ?? "", Heads - 5), TypeScale.Axis, Align.Right, Heads - 5);
            for (var column = 0; column < map.Cells[row].Length; column++)
            {
                var (cell, sign) = (new Box(box.X + Heads + (column * width), y, width, RowHeight), map.Cells[row][column]);
                pen.Frame(cell, sign is 'F' or '+' ? Ink.Wash : null, Ink.HairLine);
                pen.Text(cell.X, y + 8, sign.ToString(), sign is 'F' or '+' ? TypeScale.GearName : TypeScale.Axis, Align.Centre, width);
            }
        }

        var below = box.Y + (map.Cells.Count * RowHeight) + 9;
        var half = (box.Width - Heads - 10) / 2;
        pen.Text(box.X + Heads, below, Short(Spoken($"axle ratio down, rolling circumference across: {map.Left}"), half), TypeScale.Axis);
        pen.Text(box.X + Heads, below, Short(map.Right, half), TypeScale.Axis, Align.Right, box.Width - Heads);
        pen.Text(box.X, below + 11, string.Join(Apart, RegionMap.Letters), TypeScale.Axis);
    }

    private static string Short(string text, double width) => LineBreaker.Shortened(text, TypeScale.Axis, width);
}
