using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Speedometers;

/// <summary>A true distance driven, and what the odometer showed of it.</summary>
/// <param name="Real">Metres.</param>
/// <param name="Shown">Metres, last reading less the first.</param>
/// <param name="Text">The reading as typed.</param>
/// <exception cref="RefusedException">A distance that is not above zero.</exception>
public sealed record RunReading(double Real, double Shown, string Text)
{
    private const string Right = "10 km: 10.4 km";

    /// <summary>Metres driven; above zero.</summary>
    public double Real { get; init => field = value.AboveZero(Spoken("A true distance, m,"), Right); } = Real.AboveZero(Spoken("A true distance, m,"), Right);

    /// <summary>Metres shown; above zero.</summary>
    public double Shown { get; init => field = value.AboveZero(Spoken("A distance shown, m,"), Right); } = Shown.AboveZero(Spoken("A distance shown, m,"), Right);

    /// <summary>Reads <c>10 km: 10.4 km</c>: the true distance, a colon, what was shown.</summary>
    public static Parsed<RunReading> Read(string text)
    {
        if (text.Split(':') is not [var real, var shown]) return new Refusal("run", Spoken($"{Quantities.Shown.Quoted(text)} is no run: write the true distance, a colon, what the odometer showed."), Right);
        return ReadDistance(real).Then(driven => ReadDistance(shown).Then<RunReading>(seen => driven.Value > 0 && seen.Value > 0
            ? new RunReading(driven.Value, seen.Value, text.Trim())
            : new Refusal("distance", Spoken("Both distances must be more than zero."), Right))).In(text);
    }

    /// <summary>Reads a distance with its unit, without a ±.</summary>
    public static Parsed<Typed> ReadDistance(string text) => QuantityText.ReadPlain(text, Kind.Length).OnARoad(text).Showing("0.1 km");

    /// <summary>The reading as typed.</summary>
    public override string ToString() => Text;
}

/// <summary>What a speedometer's odometer makes of measured distances.</summary>
/// <remarks>
/// <code>q = Σ shown / Σ real</code>
/// <para>Uncertainty: the drum's smallest step at both ends and the true distance's half-width, both rectangular, alike in every run. Source: definition; JCGM 100:2008, F.2.2.1.</para>
/// </remarks>
public static class OdometerRun
{
    /// <param name="runs">At least one.</param>
    /// <param name="goodTo">How far off a true distance may be, metres.</param>
    /// <param name="drum">The smallest step of the odometer, metres.</param>
    /// <exception cref="RefusedException">Nothing was driven.</exception>
    public static Reading Of(IReadOnlyList<RunReading> runs, double goodTo, double drum)
    {
        if (runs.Count == 0) throw new RefusedException("run", Spoken("No run was driven."), "10 km: 10.4 km");
        return Reading.OdometerObserved(
            Measured.From(runs.Sum(run => run.Shown), Input.Rectangular(Spoken("odometer's drum"), drum * runs.Count, new Evidence(Spoken("odometer run"), _ => Spoken("drive a longer measured distance")))),
            Measured.From(runs.Sum(run => run.Real), Input.Rectangular(Spoken("measured distance"), goodTo * runs.Count, new Evidence(Spoken("measured distance"), _ => Spoken("use surveyed posts")))));
    }
}
