using BuildLog.Gearing.Propshafts;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>Propshafts and their joints in print.</summary>
internal static class ShaftTables
{
    private const double Degree = Math.PI / 180;

    private static readonly double[] Lengths = [24, 30, 36, 40, 45, 50, 55, 60, 65, 70, 75];

    // Outer diameter, wall in inches; critical speeds, rev/min, for those lengths in inches: 4.705e6 √(D² + d²)/L², worked out apart from this code.
    private static readonly (double Outer, double Wall, double[] Rpm)[] Tubes =
    [
        (2.0, 0.12, [21762, 13927, 9672, 7834, 6190, 5014, 4144, 3482, 2967, 2558, 2228]),
        (2.5, 0.083, [27937, 17880, 12417, 10057, 7947, 6437, 5320, 4470, 3809, 3284, 2861]),
        (2.5, 0.12, [27528, 17618, 12235, 9910, 7830, 6343, 5242, 4405, 3753, 3236, 2819]),
        (2.75, 0.065, [31026, 19857, 13789, 11169, 8825, 7148, 5908, 4964, 4230, 3647, 3177]),
        (3.0, 0.083, [33710, 21575, 14982, 12136, 9589, 7767, 6419, 5394, 4596, 3963, 3452]),
        (3.0, 0.095, [33576, 21489, 14923, 12087, 9551, 7736, 6393, 5372, 4577, 3947, 3438]),
        (3.5, 0.083, [39484, 25270, 17549, 14214, 11231, 9097, 7518, 6317, 5383, 4641, 4043]),
        (3.5, 0.095, [39349, 25184, 17489, 14166, 11193, 9066, 7493, 6296, 5365, 4626, 4029]),
        (4.0, 0.083, [45259, 28966, 20115, 16293, 12874, 10428, 8618, 7241, 6170, 5320, 4635]),
        (4.0, 0.095, [45123, 28879, 20055, 16244, 12835, 10396, 8592, 7220, 6152, 5304, 4621]),
    ];

    // The second joint's largest angle in degrees where the first has 0, 1, 2 … degrees.
    private static readonly (double Rpm, double[] Degrees)[] Pairs =
    [
        (1500, [7.3, 7.4, 7.6, 7.9, 8.3, 8.9, 9.5, 10.1, 10.8, 11.6]),
        (1600, [6.9, 6.9, 7.1, 7.5, 7.9, 8.5, 9.1, 9.8, 10.5]),
        (1700, [6.5, 6.5, 6.8, 7.1, 7.6, 8.2, 8.8]),
    ];

    public static PublishedSet CriticalSpeeds() => new("Critical speeds of steel tubes", "trade constant 4.705e6, ten tubes of eleven lengths", Standing.FromMemory,
    [
        .. Tubes.SelectMany(tube => Lengths.Zip(tube.Rpm, (length, rpm) => Figure.ToPlaces(
            FormattableString.Invariant($"{tube.Outer} × {tube.Wall} in, {length} in"), rpm, 0, 60 * CriticalSpeed.Of(InInches(tube.Outer, tube.Wall, length)).Value))),
    ]);

    public static PublishedSet JointAngles() => new("Largest joint angle by shaft speed", "a propshaft shop's page, 2015", Standing.Read,
    [
        .. new[] { (1500, 11.5), (2000, 8.67), (2500, 7), (3000, 5.83), (3500, 5), (4000, 4.25), (4500, 3.67), (5000, 3.25) }
            .Select(row => Figure.ToPlaces($"{row.Item1} rev/min", row.Item2, 2, JointAngleChart.Limit(row.Item1 / 60.0).Value / Degree)),
    ]);

    // The table is rounded loosely: 6.84° is printed as 6.9. Behind it stands 400 rad/s².
    public static PublishedSet PairsOfAngles() => new("Largest second joint angle beside a first", "an engineering reference page after SAE AE-7", Standing.Read,
    [
        .. Pairs.SelectMany(row => row.Degrees.Select((second, first) => new Figure(
            FormattableString.Invariant($"{row.Rpm} rev/min, {first}°"), second, SecondAngle(row.Rpm, first, TorsionalAcceleration.Limit), 0.1))),
    ]);

    public static PublishedSet JointSwing() => new("Speed swing of a joint", "an industrial shaft maker's catalogue", Standing.Read,
    [
        Figure.ToPlaces("swing at 10°", 0.0306, 4, CardanJoint.NonUniformity(10 * Degree)),
    ]);

    /// <summary>Degrees of a second joint in one plane and in phase, found by halving, that makes just so much shake.</summary>
    internal static double SecondAngle(double rpm, double first, double limit)
    {
        var (low, high) = (first, 30.0);
        for (var k = 0; k < 60; k++)
        {
            var middle = (low + high) / 2;
            var shake = TorsionalAcceleration.Of(EquivalentAngle.Squared([new(first * Degree, 0), new(-middle * Degree, 0)], [Yokes.InLine]), rpm / 60);
            if (shake.Value > limit) high = middle;
            else low = middle;
        }

        return low;
    }

    private static Tube InInches(double outer, double wall, double length) => new(outer * 0.0254, wall * 0.0254, length * 0.0254);
}
