using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Charts;

/// <summary>A small chart: its title, axes in round steps, and curves that each bear their name.</summary>
internal static class CurvePlate
{
    private const double LeftMargin = 24;
    private const double RightMargin = 8;
    private const double TopMargin = 27;
    private const double FootMargin = 24;
    private const int MostStepsAcross = 8;
    private const int MostStepsUp = 6;

    private static readonly Stroke Does = new(Ink.Accent, 1.3);
    private static readonly Stroke Needs = new(Ink.Text, 1.1, 3.5, 2);
    private static readonly Stroke Limit = new(Ink.Quiet, 0.9, 0.9, 1.6);
    private static readonly Stroke AxisStroke = new(Ink.Quiet, 0.7);

    public static Plate Of(CurveChart chart) => new(CurveWords.Of(chart), (pen, box) => Draw(pen, box, chart), chart);

    /// <summary>Every number is finite, and a line is to be drawn.</summary>
    public static bool CanDraw(CurveChart? chart) =>
        chart is not null
        && chart.Curves.Any(curve => curve.Points.Count > 1)
        && chart.Curves.All(curve => curve.Points.All(point => double.IsFinite(point.X) && double.IsFinite(point.Y)))
        && chart.Curves.SelectMany(curve => curve.Points).Max(point => point.X) > chart.Curves.SelectMany(curve => curve.Points).Min(point => point.X);

    private static void Draw(Pen pen, Box box, CurveChart chart)
    {
        var area = new Box(box.X + LeftMargin, box.Y + TopMargin, box.Width - LeftMargin - RightMargin, box.Height - TopMargin - FootMargin);
        var points = chart.Curves.SelectMany(curve => curve.Points).ToList();
        var across = AxisSpan.Over(Math.Min(0, points.Min(point => point.X)), points.Max(point => point.X), MostStepsAcross);
        double low = Math.Min(0, points.Min(point => point.Y)), high = Math.Max(0, points.Max(point => point.Y));
        var up = AxisSpan.Over(low, high > low ? high : low + 1, MostStepsUp);
        var place = new CurvePlace(area, across, up);

        pen.Text(box.X, box.Y + TypeScale.Strong.BaselineDrop, LineBreaker.Shortened(chart.Title, TypeScale.Strong, box.Width), TypeScale.Strong);
        DrawAxes(pen, box, place, chart);
        foreach (var curve in chart.Curves.Where(curve => curve.Points.Count > 1)) pen.Line([.. curve.Points.Select(place.At)], StrokeOf(curve.Kind));
        CurveNames.Draw(pen, place, chart.Curves);
    }

    private static void DrawAxes(Pen pen, Box box, CurvePlace place, CurveChart chart)
    {
        var (area, style) = (place.Area, TypeScale.Axis);
        foreach (var value in place.Across.Ticks)
        {
            var x = place.X(value);
            pen.Line(x, area.Y, x, area.Bottom, Ink.HairLine);
            pen.Text(x - 15, area.Bottom + 9, Number(value), style, Align.Centre, 30);
        }

        foreach (var value in place.Up.Ticks)
        {
            var y = place.Y(value);
            pen.Line(area.X, y, area.Right, y, value == 0 ? AxisStroke : Ink.HairLine);
            pen.Text(area.X - LeftMargin, y + style.CapHeight / 2, Number(value), style, Align.Right, LeftMargin - 4);
        }

        pen.Line(area.X, area.Y, area.X, area.Bottom, AxisStroke);
        pen.Text(box.X, box.Y + TypeScale.Strong.LineHeight + style.BaselineDrop, LineBreaker.Shortened(chart.Up, style, box.Width), style);
        pen.Text(area.X, area.Bottom + 19, LineBreaker.Shortened(chart.Across, style, area.Width), style, Align.Right, area.Width);
    }

    private static Stroke StrokeOf(CurveKind kind) => kind switch
    {
        CurveKind.Needs => Needs,
        CurveKind.Limit => Limit,
        _ => Does,
    };

    private static string Number(double value) => Math.Round(value, 9).ToString("0.###", Language.Spoken.Culture);
}
