using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Engines;

/// <summary>A torque curve drawn from the two peaks of a data sheet: peak torque and peak power, each with its engine speed.</summary>
/// <remarks>
/// <code>
/// n ≤ n_T          T = T_max (1 − 0.45 (1 − n/n_T)²)                     (common practice)
/// n_T … n_q        T = T_max, where the fall to n_P would else be too steep
/// n_q … n_P        cubic with slope 0 at n_q and −T_P/n_P at n_P, and never more than P_max/(2 π n)
/// n_P … 1.2 n_P    P = P_max (1 − 3 (n/n_P − 1)²)                       (common practice)
/// </code>
/// <para>T_P = P_max/(2 π n_P). The slope at n_P is what makes power peak there: dP/dn = 2π (T + n dT/dn) = 0.</para>
/// <para>Both peaks are met; everything else is an assumption with u = 5 % (common practice), and the curve is marked assumed.</para>
/// <para>Not for: engines with a step in their torque (staged charging), governed diesels beyond n_P.</para>
/// </remarks>
public static class PlausibleCurve
{
    /// <summary>Data sheets round: an engine of one power from one peak to the other may seem to beat itself by a little.</summary>
    private const double SheetRounding = 1.005;

    /// <summary>How far the drawn shape may be off, as a standard uncertainty.</summary>
    public const double ShapeSpread = 0.05;

    private const double LowEndDrop = 0.45;
    private const double OverRev = 1.2;
    private const int Pieces = 12;

    /// <param name="peakTorque">N·m.</param>
    /// <param name="atTorque">Its engine speed, rev/s.</param>
    /// <param name="peakPower">W.</param>
    /// <param name="atPower">Its engine speed, rev/s.</param>
    /// <exception cref="RefusedException">Peaks that no engine can have together.</exception>
    public static TorqueCurve From(double peakTorque, double atTorque, double peakPower, double atPower)
    {
        const string Right = "210 N·m at 2500 rev/min and 77 kW at 4500 rev/min";
        if (!(peakTorque is > 0 and < double.PositiveInfinity && peakPower is > 0 and < double.PositiveInfinity && atTorque > 0))
            throw new RefusedException("peaks", Spoken($"Peak torque, peak power and their engine speeds are more than zero, not {peakTorque:G4} N·m at {atTorque * 60:G4} rev/min and {peakPower / 1000:G4} kW."), Right);
        if (!(atPower > atTorque))
            throw new RefusedException("peaks", Spoken($"Power peaks above the engine speed where torque peaks, not at {atPower * 60:0} against {atTorque * 60:0} rev/min."), Right);

        var torqueAtPower = peakPower / (2 * Math.PI * atPower);
        if (!(torqueAtPower < peakTorque))
            throw new RefusedException("peaks", Spoken($"The peak power needs {torqueAtPower:0} N·m at its engine speed, not less than the peak torque of {peakTorque:0} N·m."), Right);
        if (peakTorque * atTorque * 2 * Math.PI > peakPower * SheetRounding)
            throw new RefusedException(
                "peaks",
                Spoken($"The peak torque at {atTorque * 60:0} rev/min makes {2 * Math.PI * atTorque * peakTorque / 1000:0.#} kW, more than the peak power of {peakPower / 1000:0.#} kW."),
                Right);

        // Fall and end slope fit one monotone cubic only while the slope is at most three times the secant.
        var fallFrom = Math.Max(atTorque, atPower - (3 * (peakTorque - torqueAtPower) * atPower / torqueAtPower));
        double Falling(double n)
        {
            var (h, t) = (atPower - fallFrom, (n - fallFrom) / (atPower - fallFrom));
            var cubic = peakTorque + ((torqueAtPower - peakTorque) * t * t * (3 - (2 * t))) - (torqueAtPower / atPower * h * t * t * (t - 1));
            return Math.Min(cubic, peakPower / (2 * Math.PI * n));
        }

        // Between n_T and n_q the curve is flat, so it needs no point there.
        var speeds = Steps(0.25 * atTorque, atTorque, 4).Concat(fallFrom > atTorque ? [fallFrom] : [])
            .Concat(Steps(fallFrom, atPower, Pieces).Skip(1)).Concat(Steps(atPower, OverRev * atPower, 4).Skip(1));
        return TorqueCurve.Drawn(
            [
                .. speeds.Select(n => new TorquePoint(n,
                    n <= atTorque ? peakTorque * (1 - (LowEndDrop * Math.Pow(1 - (n / atTorque), 2)))
                    : n < atPower ? Falling(n)
                    : peakPower * (1 - (3 * Math.Pow((n / atPower) - 1, 2))) / (2 * Math.PI * n))),
            ],
            new(atPower, torqueAtPower), ShapeSpread);
    }

    private static IEnumerable<double> Steps(double from, double to, int pieces)
        => Enumerable.Range(0, pieces + 1).Select(k => k == pieces ? to : from + ((to - from) * k / pieces));
}
