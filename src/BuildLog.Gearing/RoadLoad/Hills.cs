using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>Which gradient a force can hold.</summary>
/// <remarks>
/// <code>pull = (F − drag)/(m g) = Crr cos θ + sin θ   ⇒   θ = asin(pull/√(1 + Crr²)) − atan(Crr);   gradient = tan θ</code>
/// <code>by grip: μ (λ cos θ + κ sin θ) = Crr cos θ + sin θ   ⇒   gradient = (μ λ − Crr)/(1 − μ κ)</code>
/// <para>
/// F force at the wheels, N; μ grip; λ part of the weight on driven wheels, as it stands on the level; κ what a grade moves onto them for each sine of it: see
/// <see cref="RunningGear.WeightTransfer"/>.
/// </para>
/// <para>Uncertainty: ∂θ/∂pull = 1/(cos θ − Crr sin θ), ∂θ/∂Crr = −cos θ/(cos θ − Crr sin θ). A negative gradient is a downhill it needs to keep up.</para>
/// <para>Source: statics.</para>
/// </remarks>
public static class Hills
{
    /// <summary>Rise over run; null where the force would lift the vehicle up a wall.</summary>
    /// <param name="pullOverWeight">The force left after drag over the weight.</param>
    /// <param name="rollingResistance">Crr.</param>
    public static Measured? Held(Measured pullOverWeight, Measured rollingResistance)
    {
        var crr = rollingResistance.Value;
        var sine = pullOverWeight / (1 + (rollingResistance * rollingResistance)).SquareRoot();
        if (!(Math.Abs(sine.Value) < 1)) return null;

        var theta = sine.Map(Math.Asin, 1 / Math.Sqrt(1 - (sine.Value * sine.Value))) - rollingResistance.Map(Math.Atan, 1 / (1 + (crr * crr)));
        var cos = Math.Cos(theta.Value);
        return cos > 0.02 ? theta.Map(Math.Tan, 1 / (cos * cos)) : null;
    }

    /// <summary>Rise over run where the driven wheels begin to spin.</summary>
    public static Measured ByGrip(Measured grip, Measured drivenShare, Measured rollingResistance, Measured shift)
        => ((grip * drivenShare) - rollingResistance) / (1 - (grip * shift));
}
