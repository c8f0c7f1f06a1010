using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Charts;

/// <summary>Each curve's name on its line: in a box what the vehicle does, without one what is held against it; moved along where two names would meet.</summary>
internal static class CurveNames
{
    private const double Pad = 2.2;
    private const double Widest = 90;

    private static readonly Stroke Edge = new(Ink.Accent, 0.7);

    // Along the line from its beginning, the likeliest free place first.
    private static readonly IReadOnlyList<double> Places = [0.62, 0.78, 0.46, 0.9, 0.3, 0.16, 0.97, 0.04];

    public static void Draw(Pen pen, CurvePlace place, IReadOnlyList<Curve> curves)
    {
        var taken = new List<Box>();
        foreach (var curve in curves.Where(curve => curve.Points.Count > 1))
        {
            var does = curve.Kind == CurveKind.Does;
            var style = does ? TypeScale.GearName : TypeScale.Axis;
            var name = LineBreaker.Shortened(curve.Name, style, Widest);
            var candidates = Places.Select(share => BoxAt(place, curve, share, style.WidthOf(name), style.CapHeight)).ToList();
            var box = candidates.Find(candidate => !taken.Exists(candidate.Overlaps));
            if (box == default) box = candidates[0];
            taken.Add(box);

            pen.Frame(box, Ink.White, does ? Edge : null);
            pen.Text(box.X, box.Bottom - Pad, name, style, Align.Centre, box.Width);
        }
    }

    /// <summary>Around a point of the curve, pushed back where it would leave the plot.</summary>
    private static Box BoxAt(CurvePlace place, Curve curve, double share, double textWidth, double textHeight)
    {
        var at = place.At(curve.Points[(int)Math.Round(share * (curve.Points.Count - 1))]);
        double height = textHeight + 2 * Pad, width = Math.Max(height, textWidth + 2 * Pad);
        var area = place.Area;
        var x = Math.Clamp(at.X - width / 2, area.X, Math.Max(area.X, area.Right - width));
        var y = Math.Clamp(at.Y - height / 2, area.Y, area.Bottom - height);
        return new Box(x, y, width, height);
    }
}
