using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Charts;

/// <summary>Each gear's name on its line, moved along the line where two names would meet.</summary>
internal static class GearNames
{
    private const double Pad = 3;
    private const double Widest = 70;

    private static readonly Stroke Edge = new(Ink.Accent, 0.8);

    // Along the line from its low end, the middle first.
    private static readonly IReadOnlyList<double> Places = [0.5, 0.68, 0.32, 0.85, 0.15];

    public static void Draw(Pen pen, SawtoothPlot plot, IReadOnlyList<Tooth> teeth)
    {
        var taken = new List<Box>();
        var style = TypeScale.GearName;
        foreach (var tooth in teeth)
        {
            var name = LineBreaker.Shortened(tooth.Name, style, Widest);
            var candidates = Places.Select(place => BoxAt(plot, tooth, place, style.WidthOf(name), style.CapHeight)).ToList();
            var box = candidates.Find(candidate => !taken.Exists(candidate.Overlaps));
            if (box == default) box = candidates[0];
            taken.Add(box);

            pen.Frame(box, Ink.White, Edge);
            pen.Text(box.X, box.Bottom - Pad, name, style, Align.Centre, box.Width);
        }
    }

    private static Box BoxAt(SawtoothPlot plot, Tooth tooth, double place, double textWidth, double textHeight)
    {
        var (from, to) = (plot.At(tooth.Start), plot.At(tooth.End));
        double x = from.X + place * (to.X - from.X), y = from.Y + place * (to.Y - from.Y);
        double height = textHeight + 2 * Pad, width = Math.Max(height, textWidth + 2 * Pad);
        return new Box(x - width / 2, y - height / 2, width, height);
    }
}
