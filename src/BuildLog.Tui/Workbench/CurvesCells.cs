using BuildLog.Sheet.Content;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>Curves over zero in braille, each with its name where it is highest; dotted what the road asks and what may not be passed.</summary>
internal static class CurvesCells
{
    private const double RoomAcross = 1.02;
    private const double RoomAbove = 1.05;

    /// <param name="chart">The numbers, those across above zero.</param>
    /// <param name="width">Cells across.</param>
    /// <param name="height">Cells down.</param>
    /// <param name="unit">What stands after the last number across; empty where the axis is named elsewhere.</param>
    /// <returns>Null where there is no room.</returns>
    public static ChartCells? Of(CurveChart chart, int width, int height, string unit)
    {
        if (ChartAxes.In(width, height) is not { } axes) return null;

        var points = chart.Curves.SelectMany(curve => curve.Points).ToList();
        var (lowest, highest) = (Math.Min(0, points.Min(point => point.Y)), Math.Max(0, points.Max(point => point.Y)));
        var (low, top) = lowest < highest ? (lowest * RoomAbove, highest * RoomAbove) : (0, 1);
        var topX = points.Max(point => point.X) * RoomAcross;
        (double X, double Y) Place(CurvePoint point) => (point.X / topX, (point.Y - low) / (top - low));

        var cells = new ChartCells(width, height);
        axes.PutUp(cells, low, top, chart.Up);
        axes.PutAcross(cells, topX, unit);
        axes.PutDots(cells, Lines(chart, axes, Place));
        PutNames(cells, chart, axes, Place);
        return cells;
    }

    private static BrailleDots Lines(CurveChart chart, ChartAxes axes, Func<CurvePoint, (double X, double Y)> place)
    {
        var dots = new BrailleDots(axes.Columns, axes.Rows);
        foreach (var curve in chart.Curves)
        {
            List<(double X, double Y)> points = [.. curve.Points.Select(place)];
            if (curve.Kind != CurveKind.Does) dots.Dotted(points);
            else foreach (var (from, to) in points.Zip(points.Skip(1))) dots.Line(from.X, from.Y, to.X, to.Y);
        }

        return dots;
    }

    // A row above the peak; two gears that peak side by side leave the later one to the row below.
    private static void PutNames(ChartCells cells, CurveChart chart, ChartAxes axes, Func<CurvePoint, (double X, double Y)> place)
    {
        var taken = new HashSet<(int X, int Y)>();
        foreach (var curve in chart.Curves.Where(curve => curve.Points.Count > 0))
        {
            var peak = place(curve.Points.MaxBy(point => point.Y));
            var width = TextFit.Width(curve.Name);
            var x = Math.Clamp(axes.X(peak.X), ChartAxes.Left + 1, Math.Max(ChartAxes.Left + 1, cells.Width - width));
            var y = Math.Max(ChartAxes.Above, axes.Y(peak.Y) - 1);
            while (y < ChartAxes.Above + axes.Rows - 1 && Enumerable.Range(x - 1, width + 2).Any(cell => taken.Contains((cell, y)))) y++;
            cells.Put(x, y, curve.Name, Tone.Heading);
            foreach (var cell in Enumerable.Range(x, width)) taken.Add((cell, y));
        }
    }
}
