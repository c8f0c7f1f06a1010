using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Propshafts;

/// <summary>The largest working angle of a universal joint at a shaft speed.</summary>
/// <remarks>
/// <code>β_max(n) = D(n) / n,   D linear between the rows of the chart;   11.5° below 1500 rev/min</code>
/// <para>n shaft speed; D = n·β, between 16 250 and 17 500 degrees · rev/min: the chart is a limit of about 1000 rad/s² on β²ω².</para>
/// <para>
/// Read to 5000 rev/min. Above, the last n·β is held; <see cref="Covers"/> says so. At rated load and life; doubling angle, speed or load halves the life.
/// Uncertainty: through n. Source: chart on a propshaft shop's page of 2015, the numbers of a shaft maker's installation manual.
/// </para>
/// </remarks>
public static class JointAngleChart
{
    /// <summary>Smoothest below this, whatever the speed; three degrees. Source: a shaft maker's installation manual.</summary>
    public const double Smooth = 3 * Degree;

    /// <summary>Below this the needles do not roll; half a degree. Source: as above, later wording.</summary>
    public const double NeedlesRoll = 0.5 * Degree;

    private const double Degree = Math.PI / 180;

    private static readonly (double Rpm, double Degrees)[] Chart =
        [(1500, 11.5), (2000, 8.67), (2500, 7), (3000, 5.83), (3500, 5), (4000, 4.25), (4500, 3.67), (5000, 3.25)];

    /// <summary>Whether the chart was read up to this shaft speed, rev/s.</summary>
    public static bool Covers(Measured shaftSpeed) => shaftSpeed.Value * 60 <= Chart[^1].Rpm;

    /// <summary>Radians, at the highest speed that was read.</summary>
    internal static double LastLimit => Chart[^1].Degrees * Degree;

    /// <summary>Radians, at a shaft speed in revolutions per second.</summary>
    public static Measured Limit(Measured shaftSpeed)
    {
        var rpm = shaftSpeed.Value * 60;
        if (rpm <= Chart[0].Rpm) return Chart[0].Degrees * Degree;

        var (product, slope) = Product(rpm);
        return shaftSpeed.Map(Read, ((slope / rpm) - (product / (rpm * rpm))) * 60 * Degree);
    }

    private static double Read(double shaftSpeed)
    {
        var rpm = shaftSpeed * 60;
        return (rpm <= Chart[0].Rpm ? Chart[0].Degrees : Product(rpm).Product / rpm) * Degree;
    }

    // n·β and its slope at a speed above the first row.
    private static (double Product, double Slope) Product(double rpm)
    {
        var above = Array.FindIndex(Chart, row => row.Rpm >= rpm);
        if (above < 0) return (Chart[^1].Rpm * Chart[^1].Degrees, 0);

        var (low, high) = (Chart[above - 1], Chart[above]);
        var slope = ((high.Rpm * high.Degrees) - (low.Rpm * low.Degrees)) / (high.Rpm - low.Rpm);
        return ((low.Rpm * low.Degrees) + (slope * (rpm - low.Rpm)), slope);
    }
}
