using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Engines;

/// <summary>The air of the day an engine was on the dynamometer, as the sheet has it where nothing was corrected yet.</summary>
/// <param name="DryPressure">Pascals, water vapour taken off.</param>
/// <param name="InletCelsius">Degrees Celsius.</param>
/// <remarks>See <see cref="PowerCorrection"/>: torque at an engine speed is corrected as its power is.</remarks>
/// <exception cref="RefusedException">No air an engine was ever tested in.</exception>
public sealed record TestAir(double DryPressure, double InletCelsius)
{
    private const string Right = "95 kPa 30 °C";

    /// <summary>What the observed torque is multiplied by.</summary>
    public double Factor { get; } = PowerCorrection.J1349(DryPressure, InletCelsius);

    /// <summary>Standard uncertainty of the corrected torque as a share of it; where the correction is not trusted, all of it is in doubt.</summary>
    public double Spread => TorqueCurve.UsualSpread + (PowerCorrection.IsTrusted(Factor) ? 0 : Math.Abs(Factor - 1));

    /// <summary>Reads <c>95 kPa 30 °C</c>: barometer, then inlet air.</summary>
    public static Parsed<TestAir> Read(string text)
    {
        var words = text.Replace("°", " °", StringComparison.Ordinal).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        if (words is not [.. var barometer, var degrees, "°C"]) return new Refusal("air", Spoken($"{Shown.Quoted(text)} is no air: write the barometer, then the inlet air in °C."), Right);

        return Part(QuantityText.ReadPlain(string.Join(' ', barometer), Kind.Pressure), text).Then(pressure =>
            Part(QuantityText.ReadPlain(degrees, Kind.Number), text).Then(celsius => Parsed.From(() => new TestAir(pressure.Value, celsius.Value))));
    }

    private static Parsed<Typed> Part(Parsed<Typed> part, string whole) => part.Refusal is { } refusal ? refusal.In(whole) with { Example = Right } : part;
}
