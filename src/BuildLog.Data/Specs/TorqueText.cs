using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Specs;

/// <summary>Points of a torque curve in one text: <c>1500:180 Nm; 3000:210 Nm</c>.</summary>
internal static class TorqueText
{
    /// <summary>The largest of the torques stands for the text in queries.</summary>
    public static Parsed<Typed> Read(string text)
        => Parsed.From(() => Curve(text, Source.MakersData)).Then<Typed>(curve => new Typed(curve.StrongestPoint.Torque, Units.NewtonMetre, text.Trim()));

    /// <exception cref="RefusedException">A point is none, or they make no curve.</exception>
    public static TorqueCurve Curve(string text, Source source)
        => TorqueCurve.Of([.. text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(point => TorquePoint.Read(point).OrRefuse())], source);
}
