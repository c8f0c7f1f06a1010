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

    private static readonly TextStyle Style = TypeScale.Axis;

    public static void Draw(Pen pen, Box box, Stroke gear, Stroke drop, string? goal)
    {
        List<Entry> entries = [Line(gear, Spoken("in gear")), Line(drop, Spoken("shift"))];
        if (goal is not null) entries.Add(Beam(LineBreaker.Shortened(goal, Style, box.Width * WidestLabelShare)));

        var x = box.Right - RightMargin - entries.Sum(entry => entry.Width) - Between * (entries.Count - 1);
        var baseline = box.Y + 10;
        foreach (var entry in entries)
        {
            entry.DrawSample(pen, x, baseline - Style.CapHeight / 2);
            pen.Text(x + entry.SampleWidth + Gap, baseline, entry.Label, Style);
            x += entry.Width + Between;
        }
    }

    private static Entry Line(Stroke stroke, string label) =>
        new(label, Sample, (pen, x, middle) => pen.Line(x, middle, x + Sample, middle, stroke));

    private static Entry Beam(string label) =>
        new(label, 2 * GoalBeam.HalfWidth, (pen, x, middle) => GoalBeam.Draw(pen, x + GoalBeam.HalfWidth, middle + 3.5, middle - 3.5));

    private sealed record Entry(string Label, double SampleWidth, DrawAt DrawSample)
    {
        public double Width => SampleWidth + Gap + Style.WidthOf(Label);
    }
}
