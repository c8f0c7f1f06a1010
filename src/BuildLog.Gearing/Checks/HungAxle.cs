using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Propshafts;

namespace BuildLog.Gearing.Checks;

/// <summary>An axle where the chassis hangs it, with the propshaft that leads there.</summary>
internal sealed record HungAxle(Position Position, Axle Axle, Hanging Hanging, Position ShaftPosition, Propshaft? Shaft)
{
    public static IEnumerable<HungAxle> Of(Driveline driveline)
    {
        if (driveline.RearAxle is { } rear) yield return new(Position.RearAxle, rear, driveline.RearHanging, Position.Propshaft, driveline.Propshaft);
        if (driveline.FrontAxle is { } front) yield return new(Position.FrontAxle, front, driveline.FrontHanging, Position.FrontPropshaft, driveline.FrontPropshaft);
    }
}
