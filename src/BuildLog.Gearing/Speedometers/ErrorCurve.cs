using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Speedometers;

/// <summary>One point of the error curve; km/h.</summary>
public sealed record ErrorPoint(double Real, Measured Shown)
{
    /// <summary>V₁ − V₂, km/h; positive where it reads high.</summary>
    public Measured Error => Shown - Real;

    /// <summary>Within <see cref="SpeedometerLaw"/>, by its value.</summary>
    public bool Lawful => SpeedometerLaw.Shown(Real).Contains(Shown.Value);
}

/// <summary>What is shown at each true speed, against the law.</summary>
public static class ErrorCurve
{
    /// <exception cref="RefusedException">A step that is not above zero.</exception>
    public static IReadOnlyList<ErrorPoint> Of(Reading reading, double stepKmh = 10)
    {
        if (stepKmh is not (> 0 and <= SpeedometerLaw.To - SpeedometerLaw.From))
            throw new RefusedException("step", Spoken($"The curve is drawn in steps of more than 0 and at most 100 km/h, not {stepKmh:0.###}."), "10 km/h");

        var steps = (int)Math.Floor(((SpeedometerLaw.To - SpeedometerLaw.From) / stepKmh) + 1e-9);
        return [.. Enumerable.Range(0, steps + 1).Select(k => SpeedometerLaw.From + (k * stepKmh)).Select(real => new ErrorPoint(real, reading.Shown(real)))];
    }
}
