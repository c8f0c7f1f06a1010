using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Charts;

/// <summary>Where a chart's numbers are on the page.</summary>
internal sealed record CurvePlace(Box Area, AxisSpan Across, AxisSpan Up)
{
    public PagePoint At(CurvePoint point) => new(X(point.X), Y(point.Y));

    public double X(double value) => Area.X + Across.Share(value) * Area.Width;

    public double Y(double value) => Area.Bottom - Up.Share(value) * Area.Height;
}
