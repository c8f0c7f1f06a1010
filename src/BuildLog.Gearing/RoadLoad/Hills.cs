using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>Which gradient a force can hold.</summary>
/// <remarks>
/// <code>p = (F − drag)/(m g) = Crr cos θ + sin θ   ⇒   θ = asin(p/√(1 + Crr²)) − atan(Crr);   gradient = tan θ</code>
/// <code>by grip: μ (w cos θ + s sin θ) = Crr cos θ + sin θ   ⇒   gradient = (μ w − Crr)/(1 − μ s)</code>
/// <para>
/// F force at the wheels, N; μ grip; w part of the weight on driven wheels, as it stands on the level; s what a grade moves onto them for each sine of it: see
/// <see cref="RunningGear.WeightTransfer"/>.
/// </para>
/// <para>Uncertainty: ∂θ/∂p = 1/(cos θ − Crr sin θ), ∂θ/∂Crr = −cos θ/(cos θ − Crr sin θ). A negative gradient is a downhill it needs to keep up.</para>
/// <para>Source: statics.</para>
/// </remarks>
public static class Hills
{
    /// <summary>Rise over run; null where the force would lift the vehicle up a wall.</summary>
    /// <param name="pullOverWeight">p, the force left after drag over the weight.</param>
    /// <param name="rollingResistance">Crr.</param>
    public static Measured? Held(Measured pullOverWeight, Measured rollingResistance)
    {
        double p = pullOverWeight.Value, crr = rollingResistance.Value;
        var sine = p / Math.Sqrt(1 + (crr * crr));
        if (!(Math.Abs(sine) < 1)) return null;

        var theta = Math.Asin(sine) - Math.Atan(crr);
        var (cos, sin) = (Math.Cos(theta), Math.Sin(theta));
        if (!(cos > 0.02)) return null;

        var steeper = 1 / (cos - (crr * sin)) / (cos * cos);
        return ((pullOverWeight - p) * steeper) - ((rollingResistance - crr) * (steeper * cos)) + Math.Tan(theta);
    }

    /// <summary>Rise over run where the driven wheels begin to spin.</summary>
    public static Measured ByGrip(Measured grip, Measured drivenShare, Measured rollingResistance, Measured shift)
        => ((grip * drivenShare) - rollingResistance) / (1 - (grip * shift));
}
