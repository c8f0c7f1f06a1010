using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Charts;

/// <summary>The goal's sign: an upright beam from the lowest to the highest engine speed that would do.</summary>
internal static class GoalBeam
{
    public const double HalfWidth = 3.5;

    private static readonly Stroke Stroke = new(Ink.Text, 1.8);

    public static void Draw(Pen pen, double x, double low, double high)
    {
        pen.Line(x, low, x, high, Stroke);
        pen.Line(x - HalfWidth, low, x + HalfWidth, low, Stroke);
        pen.Line(x - HalfWidth, high, x + HalfWidth, high, Stroke);
    }
}
