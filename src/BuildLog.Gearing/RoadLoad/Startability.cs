using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>The truck trade's rule for the gradient a vehicle starts on; a second opinion beside <see cref="HillStart"/>.</summary>
/// <remarks>
/// <code>gradient in % = T i M/(10.7 · gross weight)</code>
/// <para>T torque at clutch engagement, lb·ft; i overall low ratio; M tyre turns a mile; gross weight in lb.</para>
/// <para>
/// Plain statics has 8.403 in place of 10.7 (5280/(2π · 100)); the difference is an efficiency of 0.785, so none is applied again. Small gradients only: it
/// takes the sine for the tangent, and rolling resistance for part of the 0.785.
/// </para>
/// <para>Wanted (SAE J2469, second-hand): 16 on the highway, 25 moderate, 30 severe. Source: an equipment maker's performance handbook, edition 47, p. 12-22.</para>
/// </remarks>
public static class Startability
{
    internal const double Highway = 0.16;
    internal const double Moderate = 0.25;
    internal const double Severe = 0.30;

    private const double PrintedConstant = 10.7;

    /// <summary>Rise over run.</summary>
    public static double Gradient(double torquePoundFeet, double overallRatio, double turnsPerMile, double poundsGross)
        => torquePoundFeet * overallRatio * turnsPerMile / (PrintedConstant * poundsGross) / 100;

    /// <summary>Of a driveline in its lowest gear and range; null with a converter, for which the rule was not made, and where a number is not known.</summary>
    public static double? Of(Pull pull)
        => pull.Driveline is { Transmission.Converter: null, DrivingTyres.RollingCircumference: { } tyre } && LowRange.OverallRatio(pull.Driveline) is { } overall
            ? Gradient(Units.PoundFoot.FromBase(pull.PullAwayTorque.Value), overall.Value, Units.Mile.Factor / tyre.Value.Value, pull.Resistance.Weight.Value / Units.PoundForce)
            : null;

    /// <summary>What the trade calls it enough for.</summary>
    public static string EnoughFor(double gradient) => gradient switch
    {
        >= Severe => Spoken("enough for severe going"),
        >= Moderate => Spoken("enough for moderate going"),
        >= Highway => Spoken("enough for the highway"),
        _ => Spoken("too little for the highway"),
    };
}
