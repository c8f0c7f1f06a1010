using BuildLog.Sheet.Content;
using BuildLog.Tui.Shell;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>Curves over road speed in braille, each with its name where it is highest; what is missing where there are none.</summary>
internal sealed class CurvesChart : View
{
    private CurveChart? chart;
    private string missing = "";

    public void Show(CurveChart? newChart, string newMissing)
    {
        (chart, missing) = (newChart, newMissing);
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var points = chart?.Curves.SelectMany(curve => curve.Points).ToList() ?? [];
        if (chart is null || points.Count == 0 || points.Max(point => point.Y) <= 0) return Say(missing.Length > 0 ? missing : Spoken("There is nothing left to pull with in any gear."));
        if (ChartAxes.In(this) is not { } axes) return Say(Spoken("There is no room for the chart here: c gives it the whole page."));

        var (topX, topY) = (points.Max(point => point.X) * 1.02, points.Max(point => point.Y) * 1.05);
        axes.PaintDots(this, Lines(chart, axes, topX, topY));
        axes.PaintUp(this, topY, chart.Up);
        axes.PaintAcross(this, topX, chart.Across[(chart.Across.LastIndexOf(' ') + 1)..]);
        PaintNames(chart, axes, topX, topY);
        return true;
    }

    private static BrailleDots Lines(CurveChart chart, ChartAxes axes, double topX, double topY)
    {
        var dots = new BrailleDots(axes.Columns, axes.Rows);
        foreach (var curve in chart.Curves)
        {
            foreach (var (from, to) in curve.Points.Zip(curve.Points.Skip(1))) dots.Line(from.X / topX, from.Y / topY, to.X / topX, to.Y / topY);
        }

        return dots;
    }

    // A row above the peak; two gears that peak side by side leave the later one to the row below.
    private void PaintNames(CurveChart chart, ChartAxes axes, double topX, double topY)
    {
        var taken = new HashSet<(int X, int Y)>();
        foreach (var curve in chart.Curves.Where(curve => curve.Points.Count > 0))
        {
            var peak = curve.Points.MaxBy(point => point.Y);
            var width = TextFit.Width(curve.Name);
            var x = Math.Clamp(axes.X(peak.X / topX), ChartAxes.Left + 1, Math.Max(ChartAxes.Left + 1, Viewport.Width - width));
            var y = Math.Max(ChartAxes.Above, axes.Y(peak.Y / topY) - 1);
            while (y < ChartAxes.Above + axes.Rows - 1 && Enumerable.Range(x - 1, width + 2).Any(cell => taken.Contains((cell, y)))) y++;
            this.Paint(x, y, curve.Name, Tone.Heading);
            foreach (var cell in Enumerable.Range(x, width)) taken.Add((cell, y));
        }
    }

    private bool Say(string sentence)
    {
        var y = 1;
        foreach (var line in TextFit.Wrap(sentence, Math.Max(10, Viewport.Width - 2))) this.Paint(1, y++, line, Tone.Quiet);
        return true;
    }
}
