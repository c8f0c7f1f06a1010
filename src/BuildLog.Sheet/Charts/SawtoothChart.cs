using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Charts;

/// <summary>Engine speed against road speed: a line a gear, heavy where the gear is used, dashed drops between them, and the cruise goal as a beam.</summary>
internal static class SawtoothChart
{
    private const double LeftMargin = 34;
    private const double RightMargin = 12;
    private const double TopMargin = 20;
    private const double FootMargin = 26;

    private static readonly Stroke GearStroke = new(Ink.Accent, 1.5);
    private static readonly Stroke LowerStroke = new(Ink.Accent, 0.5);
    private static readonly Stroke DropStroke = new(Ink.Quiet, 0.7, 2, 2);
    private static readonly Stroke GoalGuide = new(Ink.Text, 0.5, 0.8, 1.8);
    private static readonly Stroke AxisStroke = new(Ink.Quiet, 0.7);

    /// <summary>Every number is finite and not negative, and something is to be drawn.</summary>
    public static bool CanDraw(Sawtooth chart)
    {
        List<double> numbers = [chart.SpeedMax, chart.EngineMax];
        foreach (var gear in chart.Gears) numbers.AddRange([gear.FromSpeed, gear.FromEngine, gear.ToSpeed, gear.ToEngine]);
        if (chart.Goal is { } goal) numbers.AddRange([goal.Speed, goal.EngineLow, goal.EngineHigh]);

        return chart.Gears.Count > 0 && numbers.All(n => double.IsFinite(n) && n >= 0) && chart is { SpeedMax: > 0, EngineMax: > 0 };
    }

    public static void Draw(Pen pen, Box box, Sawtooth chart)
    {
        var area = new Box(box.X + LeftMargin, box.Y + TopMargin, box.Width - LeftMargin - RightMargin, box.Height - TopMargin - FootMargin);
        var plot = SawtoothPlot.Of(chart, area);
        if (chart.Goal is { } wanted) FillWanted(pen, plot, wanted);
        DrawAxes(pen, plot, chart);
        if (chart.Goal is { } goal) DrawGoal(pen, plot, goal);
        DrawGears(pen, plot, chart.Gears);
        ChartKey.Draw(pen, box, GearStroke, DropStroke, chart.Goal?.Label);
    }

    private static void DrawAxes(Pen pen, SawtoothPlot plot, Sawtooth chart)
    {
        var area = plot.Area;
        var style = TypeScale.Axis;
        foreach (var speed in plot.Speeds.Ticks)
        {
            var x = plot.X(speed);
            pen.Line(x, area.Y, x, area.Bottom, Ink.HairLine);
            pen.Line(x, area.Bottom, x, area.Bottom + 3, AxisStroke);
            pen.Text(x - 20, area.Bottom + 11, Number(speed), style, Align.Centre, 40);
        }

        foreach (var engine in plot.Engines.Ticks)
        {
            var y = plot.Y(engine);
            pen.Line(area.X, y, area.Right, y, Ink.HairLine);
            pen.Line(area.X - 3, y, area.X, y, AxisStroke);
            pen.Text(area.X - LeftMargin, y + style.CapHeight / 2, Number(engine), style, Align.Right, LeftMargin - 6);
        }

        pen.Line(area.X, area.Y, area.X, area.Bottom, AxisStroke);
        pen.Line(area.X, area.Bottom, area.Right, area.Bottom, AxisStroke);
        pen.Text(area.X - LeftMargin, area.Y - 10, Spoken($"engine speed, {chart.EngineUnit}"), style);
        pen.Text(area.X, area.Bottom + 22, Spoken($"road speed, {chart.SpeedUnit}"), style, Align.Right, area.Width);
    }

    // Below the grid, whose lines the reader counts.
    private static void FillWanted(Pen pen, SawtoothPlot plot, GoalMark goal)
    {
        double low = plot.Y(goal.EngineLow), high = plot.Y(goal.EngineHigh);
        pen.Fill(new Box(plot.Area.X, high, plot.Area.Width, low - high), Ink.Wash);
    }

    private static void DrawGoal(Pen pen, SawtoothPlot plot, GoalMark goal)
    {
        var x = plot.X(goal.Speed);
        pen.Line(x, plot.Area.Y, x, plot.Area.Bottom, GoalGuide);
        GoalBeam.Draw(pen, x, plot.Y(goal.EngineLow), plot.Y(goal.EngineHigh));
    }

    private static void DrawGears(Pen pen, SawtoothPlot plot, IReadOnlyList<GearLine> gears)
    {
        var teeth = Tooth.Of(gears);
        foreach (var tooth in teeth)
        {
            if (tooth.Drop is { } top) Draw(top, tooth.Start, DropStroke);
            if (tooth.Start != tooth.Lowest) Draw(tooth.Lowest, tooth.Start, LowerStroke);
            Draw(tooth.Start, tooth.End, GearStroke);
        }

        GearNames.Draw(pen, plot, teeth);

        void Draw(ChartPoint from, ChartPoint to, Stroke stroke)
        {
            var (a, b) = (plot.At(from), plot.At(to));
            pen.Line(a.X, a.Y, b.X, b.Y, stroke);
        }
    }

    private static string Number(double value) => value.ToString("0.###", Language.Spoken.Culture);
}
