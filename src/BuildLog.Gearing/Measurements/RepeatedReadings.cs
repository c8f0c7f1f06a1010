using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Measurements;

/// <summary>One length, or anything else, read several times with one tool.</summary>
/// <remarks>
/// <code>x = mean,   u² = s² / n + a² / 3</code>
/// <para>s scatter of the n readings, with n − 1 degrees of freedom; a the tool's own half-width, rectangular, alike in all readings.</para>
/// <para>A single reading has no scatter to see, so the tool alone speaks. Source: JCGM 100:2008, 4.2.3 and 4.3.7.</para>
/// </remarks>
public static class RepeatedReadings
{
    /// <param name="readings">At least one, in base units.</param>
    /// <param name="tool">The tool's half-width, in base units.</param>
    /// <param name="name">What was read.</param>
    /// <exception cref="RefusedException">No reading.</exception>
    public static Measured Mean(IReadOnlyList<double> readings, double tool, string name)
    {
        if (readings.Count == 0) throw new RefusedException("readings", Spoken($"No {name} was read."), "");

        var evidence = new Evidence(name, _ => Spoken($"read the {name} more often, and with a finer tool"));
        var mean = Measured.From(readings.Average(), Input.Rectangular(Spoken($"{name}, tool"), tool, evidence));
        if (readings.Count == 1) return mean;

        var scatter = Math.Sqrt(readings.Sum(reading => Math.Pow(reading - mean.Value, 2)) / (readings.Count - 1) / readings.Count);
        return scatter == 0 ? mean : mean + Measured.From(0, new Input(Spoken($"{name}, scatter"), scatter, evidence, readings.Count - 1));
    }
}
