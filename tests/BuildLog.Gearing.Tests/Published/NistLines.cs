using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>NIST Statistical Reference Datasets (SRD 140), linear regression and univariate statistics, certified to 15 digits.</summary>
internal static class NistLines
{
    // NIST StRD NoInt1: y = 130 … 140 on x = 60 … 70, line through the origin.
    private static readonly (double X, double Y)[] NoInt1 = [.. Enumerable.Range(0, 11).Select(k => (60.0 + k, 130.0 + k))];

    // NIST StRD Norris: y on x, line with an intercept.
    private static readonly (double X, double Y)[] Norris =
    [
        (0.2, 0.1), (337.4, 338.8), (118.2, 118.1), (884.6, 888.0), (10.1, 9.2), (226.5, 228.1), (666.3, 668.5), (996.3, 998.5), (448.6, 449.1),
        (777.0, 778.9), (558.2, 559.2), (0.4, 0.3), (0.6, 0.1), (775.5, 778.1), (666.9, 668.8), (338.0, 339.3), (447.5, 448.9), (11.6, 10.8),
        (556.0, 557.7), (228.1, 228.3), (995.8, 998.0), (887.6, 888.8), (120.2, 119.6), (0.3, 0.3), (0.3, 0.6), (556.8, 557.6), (339.1, 339.3),
        (887.2, 888.0), (999.0, 998.5), (779.0, 778.9), (11.1, 10.2), (118.3, 117.6), (229.2, 228.9), (669.1, 668.4), (448.9, 449.2), (0.5, 0.2),
    ];

    // NIST StRD Lew: deflections of a steel-concrete beam.
    private static readonly double[] Lew =
    [
        -213, -564, -35, -15, 141, 115, -420, -360, 203, -338, -431, 194, -220, -513, 154, -125, -559, 92, -21, -579, -52, 99, -543, -175, 162,
        -457, -346, 204, -300, -474, 164, -107, -572, -8, 83, -541, -224, 180, -420, -374, 201, -236, -531, 83, 27, -564, -112, 131, -507, -254,
        199, -311, -495, 143, -46, -579, -90, 136, -472, -338, 202, -287, -477, 169, -124, -568, 17, 48, -568, -135, 162, -430, -422, 172, -74,
        -577, -13, 92, -534, -243, 194, -355, -465, 156, -81, -578, -64, 139, -449, -384, 193, -198, -538, 110, -44, -577, -6, 66, -552, -164,
        161, -460, -344, 205, -281, -504, 134, -28, -576, -118, 156, -437, -381, 200, -220, -540, 83, 11, -568, -160, 172, -414, -408, 188, -125,
        -572, -32, 139, -492, -321, 205, -262, -504, 142, -83, -574, 0, 48, -571, -106, 137, -501, -266, 190, -391, -406, 194, -186, -553, 83,
        -13, -577, -49, 103, -515, -280, 201, 300, -506, 131, -45, -578, -80, 138, -462, -361, 201, -211, -554, 32, 74, -533, -235, 187, -372,
        -442, 182, -147, -566, 25, 68, -535, -244, 194, -351, -463, 174, -125, -570, 15, 72, -550, -190, 172, -424, -385, 198, -218, -536, 96,
    ];

    // NIST StRD Michelso: the speed of light of 1879, 1000 km/s, less 299, times 100.
    private static readonly int[] Michelso =
    [
        85, 74, 90, 107, 93, 85, 95, 98, 98, 88, 100, 98, 93, 65, 76, 81, 100, 100, 96, 96, 96, 94, 96, 94, 88,
        80, 85, 88, 90, 84, 83, 79, 81, 88, 88, 83, 80, 79, 76, 80, 88, 88, 88, 86, 72, 72, 62, 86, 97, 95,
        88, 91, 85, 87, 84, 84, 85, 84, 84, 84, 89, 81, 81, 82, 80, 77, 76, 74, 75, 76, 91, 92, 89, 86, 88,
        72, 84, 85, 85, 78, 89, 84, 78, 81, 76, 81, 79, 81, 82, 85, 87, 87, 81, 74, 81, 94, 95, 80, 81, 87,
    ];

    public static PublishedSet ThroughTheOrigin()
    {
        var line = Fit(NoInt1);
        var residual = Math.Sqrt(NoInt1.Sum(point => Math.Pow(point.Y - (line.Slope.Value * point.X), 2)) / line.Slope.DegreesOfFreedom);
        return new("Line through the origin, NoInt1", "NIST StRD NoInt1", Standing.Read,
        [
            Figure.ToRelative("B1", 2.07438016528926, line.Slope.Value, 1e-12),
            Figure.ToRelative("standard deviation of B1", 0.165289256198347E-01, line.Slope.StandardUncertainty, 1e-12),
            Figure.ToRelative("residual degrees of freedom", 10, line.Slope.DegreesOfFreedom, 1e-12),
            Figure.ToRelative("residual standard deviation", 3.56753034006338, residual, 1e-12),
        ]);
    }

    // No computation of the engine fits an intercept. A line with one is a line through the origin about the means; there the means take one more
    // degree of freedom than our fit knows of: n − 2 instead of n − 1. Mean and slope are independent, and the intercept is made of both.
    public static PublishedSet AboutTheMean()
    {
        var (x, y) = (Norris.Average(point => point.X), Norris.Average(point => point.Y));
        var line = Fit([.. Norris.Select(point => (point.X - x, point.Y - y))]).Slope;
        var uSlope = line.StandardUncertainty * Math.Sqrt(35 / 34.0);
        var s = uSlope * Math.Sqrt(Norris.Sum(point => Math.Pow(point.X - x, 2)));
        var evidence = new Evidence("published line");
        var (mean, slope) = (Measured.From(y, new Input("mean", s / Math.Sqrt(Norris.Length), evidence, 34)), Measured.From(line.Value, new Input("slope", uSlope, evidence, 34)));
        var intercept = mean - (slope * x);
        return new("Line with an intercept, from its slope about the means, Norris", "NIST StRD Norris", Standing.Read,
        [
            Figure.ToRelative("B1", 1.00211681802045, slope.Value, 1e-12),
            Figure.ToRelative("standard deviation of B1", 0.429796848199937E-03, slope.StandardUncertainty, 1e-11),
            Figure.ToRelative("B0", -0.262323073774029, intercept.Value, 1e-11),
            Figure.ToRelative("standard deviation of B0", 0.232818234301152, intercept.StandardUncertainty, 1e-11),
            Figure.ToRelative("residual standard deviation", 0.884796396144373, s, 1e-11),
        ]);
    }

    // Repeats of one reading are marks at one turn: the slope is their mean, and u their standard deviation over √n.
    public static PublishedSet Repeats() => Univariate("Mean and deviation of repeats, as marks at one turn", readings => Fit(readings.Select(reading => (1.0, reading))).Slope);

    public static PublishedSet Readings() => Univariate("Mean and deviation of repeated readings", readings => RepeatedReadings.Mean(readings, tool: 0, "reading"));

    // Mean and deviation are certified exactly or to 15 digits; what is lost is what binary numbers of seven and eight digits cannot hold.
    private static PublishedSet Univariate(string name, Func<double[], Measured> meanOf)
    {
        (string Name, double Mean, double Deviation, double Off, double[] Readings)[] sets =
        [
            ("Lew", -177.435, 277.332168044316, 1e-12, Lew),
            ("Michelso", 299.8524, 0.0790105478190518, 1e-11, [.. Michelso.Select(reading => 299 + (reading / 100.0))]),
            ("NumAcc1", 10_000_002, 1, 1e-12, [10_000_001, 10_000_003, 10_000_002]),
            ("NumAcc2", 1.2, 0.1, 1e-12, Alternating(1.2, 1.1, 1.3)),
            ("NumAcc3", 1_000_000.2, 0.1, 1e-8, Alternating(1_000_000.2, 1_000_000.1, 1_000_000.3)),
            ("NumAcc4", 10_000_000.2, 0.1, 1e-7, Alternating(10_000_000.2, 10_000_000.1, 10_000_000.3)),
        ];
        return new(name, "NIST StRD Lew, Michelso, NumAcc1, NumAcc2, NumAcc3, NumAcc4", Standing.Read,
        [
            .. sets.SelectMany(set =>
            {
                var mean = meanOf(set.Readings);
                return new[]
                {
                    Figure.ToRelative($"{set.Name} mean", set.Mean, mean.Value, 1e-12),
                    Figure.ToRelative($"{set.Name} standard deviation", set.Deviation, mean.StandardUncertainty * Math.Sqrt(set.Readings.Length), set.Off),
                };
            }),
        ]);
    }

    private static double[] Alternating(double first, double low, double high) => [first, .. Enumerable.Range(0, 1000).Select(k => k % 2 == 0 ? low : high)];

    private static LineThroughOrigin Fit(IEnumerable<(double X, double Y)> points)
        => LineThroughOrigin.Fit([.. points.Select(point => (Measured.Exact(point.X), Measured.Exact(point.Y)))], new Evidence("published line"));
}
