using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Papers.Orders;

/// <summary>A piece of a propshaft from the side, not to scale: tube, yokes, joint centres, and its measures on dimension lines.</summary>
internal static class ShaftDrawing
{
    private const double YokeLength = 34;
    private const double TubeHalf = 11;
    private const double Joint = 7;
    private const double Arrow = 4;

    private static readonly Stroke Outline = new(Ink.Accent, 1.1);
    private static readonly Stroke Measure = new(Ink.Quiet, 0.6);
    private static readonly Stroke CentreLine = new(Ink.Quiet, 0.5, 6, 2, 1, 2);

    public static Plate Of(ShaftPieceOrder piece) => new(
        PlainText.Line(Spoken($"Drawing of the shaft, not to scale: {Missing.OrWords(piece.Length)} from joint centre to joint centre, tube {Missing.OrWords(piece.TubeDiameter)} across, wall {Missing.OrWords(piece.Wall)}.")),
        (pen, box) => Draw(pen, box, piece));

    private static void Draw(Pen pen, Box box, ShaftPieceOrder piece)
    {
        double left = box.X + 60, right = box.Right - 60, middle = box.Y + 34;
        pen.Line(box.X + 30, middle, box.Right - 30, middle, CentreLine);
        pen.Frame(new Box(left + YokeLength, middle - TubeHalf, right - left - 2 * YokeLength, 2 * TubeHalf), Ink.Wash, Outline);
        Yoke(pen, left, middle, 1);
        Yoke(pen, right, middle, -1);

        var below = middle + 38;
        pen.Line(left, middle + Joint, left, below + 4, Measure);
        pen.Line(right, middle + Joint, right, below + 4, Measure);
        Dimension(pen, left, right, below);
        pen.Text(left, below - 4, LineBreaker.Shortened(Missing.OrWords(piece.Length), TypeScale.Strong, right - left - 20), TypeScale.Strong, Align.Centre, right - left);
        pen.Text(left, below + 12, Spoken("joint centre to joint centre, at ride height"), TypeScale.Axis, Align.Centre, right - left);

        var tube = LineBreaker.Shortened(Spoken($"tube {Missing.OrWords(piece.TubeDiameter)} across, wall {Missing.OrWords(piece.Wall)}"), TypeScale.Axis, right - left - 2 * YokeLength);
        pen.Text(left, middle - TubeHalf - 6, tube, TypeScale.Axis, Align.Centre, right - left);
        pen.Text(box.X, middle - TubeHalf - 14, Spoken("front"), TypeScale.Axis);
        pen.Text(box.X, middle - TubeHalf - 14, Spoken("rear"), TypeScale.Axis, Align.Right, box.Width);
    }

    /// <summary>The forked end, from the joint's centre to the tube; <paramref name="towards"/> is 1 to the right.</summary>
    private static void Yoke(Pen pen, double centre, double middle, int towards)
    {
        var (fork, tube) = (centre - towards * Joint, centre + towards * YokeLength);
        pen.Line([new(fork, middle - Joint), new(centre + towards * 12, middle - Joint), new(tube, middle - TubeHalf)], Outline);
        pen.Line([new(fork, middle + Joint), new(centre + towards * 12, middle + Joint), new(tube, middle + TubeHalf)], Outline);
        pen.Line(centre - 4, middle, centre + 4, middle, Outline);
        pen.Line(centre, middle - Joint - 2, centre, middle + Joint + 2, Outline);
    }

    private static void Dimension(Pen pen, double left, double right, double y)
    {
        pen.Line(left, y, right, y, Measure);
        pen.Line([new(left + Arrow, y - 2), new(left, y), new(left + Arrow, y + 2)], Measure);
        pen.Line([new(right - Arrow, y - 2), new(right, y), new(right - Arrow, y + 2)], Measure);
    }
}
