using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Charts;

/// <summary>What the lines mean, above the chart at the right.</summary>
internal static class ChartKey
{
    private const double Sample = 14;
    private const double Gap = 4;
    private const double Between = 12;
    private const double WidestLabelShare = 0.45;
    private const double RightMargin = 12;

    public static void Draw(Pen pen, Box box, Stroke gear, Stroke drop, (Stroke Stroke, string Label)? goal)
    {
        List<(Stroke Stroke, string Label)> entries = [(gear, "in gear"), (drop, "shift")];
        if (goal is { } marked) entries.Add((marked.Stroke, LineBreaker.Shortened(marked.Label, TypeScale.Axis, box.Width * WidestLabelShare)));

        var width = entries.Sum(entry => Sample + Gap + TypeScale.Axis.WidthOf(entry.Label)) + Between * (entries.Count - 1);
        var x = box.Right - RightMargin - width;
        var baseline = box.Y + 10;
        var middle = baseline - TypeScale.Axis.CapHeight / 2;
        foreach (var (stroke, label) in entries)
        {
            pen.Line(x, middle, x + Sample, middle, stroke);
            pen.Text(x + Sample + Gap, baseline, label, TypeScale.Axis);
            x += Sample + Gap + TypeScale.Axis.WidthOf(label) + Between;
        }
    }
}
