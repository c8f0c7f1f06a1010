using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>Short propagation and Welch–Satterthwaite examples from uncertainty handbooks.</summary>
internal static class SmallExamples
{
    private static readonly Evidence Printed = new("printed example");

    /// <summary>Two worked examples from the test material of a national laboratory's uncertainty calculator.</summary>
    public static PublishedSet Calculator()
    {
        var sum = Of(0, 0.57, 9) + Of(0, 0.25);
        var transfer = Of(0.1820, 0.00093, 9) / Of(0.1823, 0.00058, 19) * Of(0.6978, 0.0026, 19);
        return new("Welch–Satterthwaite of a sum and of a quotient", "a national laboratory's uncertainty calculator, worked examples", Standing.Read,
        [
            Figure.ToPlaces("sum, ν", 12.8, 1, sum.DegreesOfFreedom),
            Figure.ToPlaces("quotient, y", 0.6967, 4, transfer.Value),

            // Printed 0.00494 and 27.7 come from rounded relative uncertainties; unrounded they are 0.004932 and 27.51.
            new Figure("quotient, u", 0.00494, transfer.StandardUncertainty, 0.00001),
            new Figure("quotient, ν", 27.7, transfer.DegreesOfFreedom, 0.2),
            Figure.ToPlaces("quotient, half the 95 % interval", 0.0101, 4, transfer.Expanded95),
        ]);
    }

    /// <summary>A mean with its scatter and four rectangular half-widths; radioactive decay.</summary>
    public static PublishedSet Gum5()
    {
        // Repeats of one quantity are a line through the origin with x = 1.
        double[] kilonewtons = [10006, 10007, 10005, 10008, 10003, 10005];
        var mean = LineThroughOrigin.Fit([.. kilonewtons.Select(reading => (Measured.Exact(1), Measured.Exact(reading)))], Printed).Slope;
        var force = mean;
        foreach (var half in (double[])[6.8, 8.2, 8.7, 10.2]) force += Measured.From(0, Input.Rectangular("limit", half, Printed));

        // A = A0 · 2^(−t/T): of two inputs, with the derivatives ∂A/∂A0 = A/A0 and ∂A/∂T = A · ln 2 · t / T².
        var (start, halfLife, t) = (Of(11.450, 0.05), Of(32.9, 1.4), 2.73);
        var share = Math.Pow(2, -t / 32.9);
        var activity = start * halfLife.Map(life => Math.Pow(2, -t / life), share * Math.Log(2) * t / (32.9 * 32.9));

        return new("Breaking force and radioactive decay", "JCGM GUM-5, examples 14 and 15", Standing.Read,
        [
            Figure.ToPlaces("force, mean", 10005.7, 1, force.Value),
            Figure.ToPlaces("force, u of the mean", 0.7, 1, mean.StandardUncertainty),
            Figure.ToPlaces("force, u", 9.9, 1, force.StandardUncertainty),
            Figure.ToPlaces("force, half the 95 % interval", 19.4, 1, force.Expanded95),
            Figure.ToPlaces("activity", 10.81, 2, activity.Value),
            Figure.ToPlaces("activity, u", 0.054, 3, activity.StandardUncertainty),
        ]);
    }

    /// <summary>Linear expansion: both lengths stand twice in the formula, and count once each.</summary>
    public static PublishedSet Expansion()
    {
        var (before, after, cold, hot) = (Of(1.4999, 0.0001), Of(1.5021, 0.0002), Of(288.15, 0.02), Of(373.10, 0.05));
        var alpha = (after - before) / (before * (hot - cold));
        return new("Coefficient of expansion", "NIST TN 1900, example 13", Standing.Read,
        [
            Figure.ToPlaces("α · 10⁵", 1.7266, 4, alpha.Value * 1e5),
            Figure.ToPlaces("u(α) · 10⁶", 1.76, 2, alpha.StandardUncertainty * 1e6),
        ]);
    }

    private static Measured Of(double value, double u, double freedom = double.PositiveInfinity) => Measured.From(value, new Input("input", u, Printed, freedom));
}
