using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Specs;

/// <summary>Points of a torque curve in one text: <c>1500:180 Nm; 3000:210 Nm</c>, with <c>air 95 kPa 30 °C</c> behind them where they are as read on that day.</summary>
public static class TorqueText
{
    private const string Air = "air ";

    /// <summary>The largest of the torques stands for the text in queries.</summary>
    public static Parsed<Typed> Read(string text)
        => Parsed.From(() => Curve(text, Source.MakersData)).In(text).Then<Typed>(curve => new Typed(curve.StrongestPoint.Torque, Units.NewtonMetre, text.Trim()));

    /// <exception cref="RefusedException">A point is none, or they make no curve.</exception>
    public static TorqueCurve Curve(string text, Source source)
    {
        var parts = text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (parts is not [.. var observed, var last] || !last.StartsWith(Air, StringComparison.OrdinalIgnoreCase)) return TorqueCurve.Of([.. parts.Select(Point)], source);

        var air = TestAir.Read(last[Air.Length..]).OrRefuse();
        return TorqueCurve.Of([.. observed.Select(Point).Select(point => point with { Torque = point.Torque * air.Factor })], source, air.Spread);
    }

    private static TorquePoint Point(string text) => TorquePoint.Read(text).OrRefuse();
}
