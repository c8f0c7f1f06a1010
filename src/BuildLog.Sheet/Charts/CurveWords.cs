using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Charts;

/// <summary>A chart of curves in words, for those who cannot see it: each line's ends and its highest point.</summary>
internal static class CurveWords
{
    public static string Of(CurveChart chart)
    {
        var curves = chart.Curves.Where(curve => curve.Points.Count > 1).Select(Of);
        return PlainText.Line(Spoken($"Chart: {chart.Title}, {chart.Up} over {chart.Across}. {string.Join("; ", curves)}."));
    }

    private static string Of(Curve curve)
    {
        var (first, last, top) = (curve.Points[0], curve.Points[^1], curve.Points.MaxBy(point => point.Y));
        var peak = top == first || top == last ? "" : Spoken($", highest {At(top)}");
        return Spoken($"{curve.Name} from {At(first)} to {At(last)}{peak}");
    }

    private static string At(CurvePoint point) => Spoken($"{Short(point.Y)} at {Short(point.X)}");

    private static string Short(double value) => Math.Round(value, 1).ToString("0.#", Language.Spoken.Culture);
}
