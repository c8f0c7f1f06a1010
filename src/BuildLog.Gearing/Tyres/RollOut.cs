using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres;

/// <summary>How a roll-out was done.</summary>
/// <param name="Loaded">The vehicle stood on the tyre; otherwise the wheel was rolled loose.</param>
/// <param name="Construction">Decides the loaded factor of a loose wheel.</param>
/// <param name="Tape">Half-width of the tape's error, metres.</param>
/// <param name="Align">How far off the wheel's mark may have been, in turns.</param>
public sealed record RollOutPrecision(bool Loaded, Construction Construction = Construction.Radial, double Tape = 0.002, double Align = 0.01);

/// <summary>A tyre's circumference from marks on the floor.</summary>
/// <remarks>
/// <code>distance = C · turns, through the origin;   loaded: C_rolling = C;   loose: C_rolling = k · C</code>
/// <para>Errors: the tape is rectangular ± t once a distance; the mark rectangular ± a turns once a count, that is ± a·C along the floor.</para>
/// <para>A loose wheel covers more ground than the loaded, driven tyre will; the loaded factor k takes that off, with its own uncertainty.</para>
/// <para>Not for: soft ground, a curve, marks of different runs taken as one. Source: definition; JCGM 100:2008, 4.3.7; k see <see cref="LoadedFactor"/>.</para>
/// </remarks>
public sealed class RollOut
{
    private RollOut(IReadOnlyList<RollReading> readings, RollOutPrecision how, Measured measured) => (Readings, How, Measured) = (readings, how, measured);

    /// <summary>The marks it was made of, as typed.</summary>
    public IReadOnlyList<RollReading> Readings { get; }

    /// <summary>How it was rolled.</summary>
    public RollOutPrecision How { get; }

    /// <summary>Metres a turn, as rolled.</summary>
    public Measured Measured { get; }

    /// <summary>Metres a turn of the loaded tyre.</summary>
    public Measured RollingCircumference => How.Loaded ? Measured : Measured * LoadedFactor.For(How.Construction);

    /// <summary>Diameter of the free tyre, metres; null if it was rolled loaded.</summary>
    public Measured? FreeDiameter => How.Loaded ? null : Measured * (1 / Math.PI);

    /// <exception cref="RefusedException">No reading, or an impossible tape or alignment.</exception>
    public static RollOut Of(IReadOnlyList<RollReading> readings, RollOutPrecision how, string? name = null)
    {
        name ??= Spoken("roll-out");
        if (readings.Count == 0) throw new RefusedException("roll", Spoken("No roll was given."), "3:6125mm");
        if (!(how.Tape is >= 0 and <= 0.1))
            throw new RefusedException("tape", Spoken($"A tape is good to 0 to 100 mm, not to {how.Tape * 1000:0.#} mm."), "2mm");
        if (!(how.Align is >= 0 and <= 0.5))
            throw new RefusedException("align", Spoken($"A wheel's mark is off by 0 to 0.5 turn, not by {how.Align}."), "0.01");

        // The advice speaks of the fit, and the fit's inputs of the evidence: it is asked for when both are there.
        RollOut? roll = null;
        var evidence = new Evidence(name, factor => roll!.Advice(factor, name));
        var points = readings.Select(reading => (
            Measured.From(reading.Turns, Input.Rectangular(Spoken($"wheel mark of {reading.Text}"), how.Align, evidence)),
            Measured.From(reading.Distance, Input.Rectangular(Spoken($"tape of {reading.Text}"), how.Tape, evidence)))).ToList();
        return roll = new(readings, how, LineThroughOrigin.Fit(points, evidence).Slope);
    }

    // So far that one roll alone is better than today's line by the factor; where marks scatter, at least that much further than today.
    private string Advice(double factor, string name)
    {
        var oneTurn = Math.Sqrt(Math.Pow(How.Tape, 2) + Math.Pow(Measured.Value * How.Align, 2)) / Math.Sqrt(3);
        var turns = Math.Max(oneTurn / Measured.StandardUncertainty, Readings.Max(reading => reading.Turns)) * factor;
        return Spoken($"roll over {Math.Ceiling(turns - 1e-9):0} turns ({name})");
    }
}
