using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>An axle with two ratios: a planetary between ring gear and differential, locked for the road.</summary>
/// <remarks>
/// <code>low: i = i_ring · (1 + S/R);   high: i = i_ring</code>
/// <para>i_ring ring gear over pinion; R, S teeth of the planetary, ring driving, sun held. Locked, the planetary is not in the ratio.</para>
/// <para>
/// Note which one is engaged before counting. A speedometer driven by the gearbox reads only one of them right.
/// </para>
/// <para>Source: <see cref="Planetary"/>; worked: 9.04 over 6.50 is a planetary of 1.391, from memory.</para>
/// </remarks>
/// <param name="High">The ratio for the road, propshaft turns per wheel turn.</param>
/// <param name="Step">Low over high.</param>
public sealed record TwoSpeedAxle(Measured High, Measured Step)
{
    /// <summary>i_ring, propshaft turns per wheel turn; above zero.</summary>
    public Measured High { get; init => field = value.AboveZero(Spoken("An axle ratio"), "6.50"); } = High.AboveZero(Spoken("An axle ratio"), "6.50");

    /// <summary>1 + S/R, low over high; above zero.</summary>
    public Measured Step { get; init => field = value.AboveZero(Spoken("A two-speed axle's step"), "1.39"); } = Step.AboveZero(Spoken("A two-speed axle's step"), "1.39");

    private const string PlanetarySet = "planetary";

    /// <summary>From memory: it may ask, never decide.</summary>
    public static readonly Window UsualStep = new(1.33, 1.45);

    /// <summary>The low ratio, propshaft turns per wheel turn.</summary>
    public Measured Low => High * Step;

    /// <summary>From counted teeth: exact.</summary>
    public static TwoSpeedAxle Of(Teeth teeth, Planetary planetary) => new(teeth.ToMeasured(), planetary.SunHeld);

    /// <summary>Both counted: the step is their quotient, and what the counts share cancels in it.</summary>
    public static TwoSpeedAxle Counted(Measured high, Measured low) => new(high.AboveZero(Spoken("An axle ratio"), "6.50"), low / high);

    /// <summary>Reads a step: <c>1.39</c>; both printed ratios, low over high, <c>9.04/6.50</c>; or its teeth, ring over sun, <c>planetary 46/18</c>.</summary>
    public static Parsed<Typed> ReadStep(string text) => Read(text).In(text);

    private static Parsed<Typed> Read(string text)
        => text.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries) switch
        {
            [PlanetarySet, var set] => Planetary.Read(set).Then(read => Checked(read.SunHeld, 0, text)),
            [var pair] when pair.Split('/') is [var low, var high] => QuotedRatio.Read(low, RatioRange.Axle).Then(one => QuotedRatio.Read(high, RatioRange.Axle).Then(other => Quotient(one, other, text))),
            _ => QuotedRatio.Read(text, RatioRange.AxleStep).Then(quoted => Checked(quoted.Ratio, quoted.StandardUncertainty, text)),
        };

    private static Parsed<Typed> Quotient(QuotedRatio low, QuotedRatio high, string text)
    {
        var step = low.Ratio / high.Ratio;
        return Checked(step, step * Math.Sqrt(Math.Pow(low.StandardUncertainty / low.Ratio, 2) + Math.Pow(high.StandardUncertainty / high.Ratio, 2)), text);
    }

    private static Parsed<Typed> Checked(double step, double u, string text)
        => RatioRange.AxleStep.Accepts(step) ? new Typed(step, Units.One, text.Trim(), u) : RatioRange.AxleStep.Refuse(step);
}
