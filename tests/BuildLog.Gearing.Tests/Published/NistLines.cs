using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>NIST Statistical Reference Datasets (SRD 140), linear regression, certified to 15 digits.</summary>
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

    // A line with an intercept is a line through the origin about the means; there the means take one more degree of freedom
    // than our fit knows of: n − 2 instead of n − 1.
    public static PublishedSet AboutTheMean()
    {
        var (x, y) = (Norris.Average(point => point.X), Norris.Average(point => point.Y));
        var line = Fit([.. Norris.Select(point => (point.X - x, point.Y - y))]);
        return new("Slope of a line about its means, Norris", "NIST StRD Norris", Standing.Read,
        [
            Figure.ToRelative("B1", 1.00211681802045, line.Slope.Value, 1e-12),
            Figure.ToRelative("standard deviation of B1", 0.429796848199937E-03, line.Slope.StandardUncertainty * Math.Sqrt(35 / 34.0), 1e-11),
        ]);
    }

    // Repeats of one reading are marks at one turn: the slope is their mean, and u their standard deviation over √n.
    // Mean and deviation are certified exactly; what is lost is what binary numbers of seven and eight digits cannot hold.
    public static PublishedSet Repeats()
    {
        (string Name, double Mean, double Deviation, double Off, double[] Readings)[] sets =
        [
            ("NumAcc1", 10_000_002, 1, 1e-12, [10_000_001, 10_000_003, 10_000_002]),
            ("NumAcc2", 1.2, 0.1, 1e-12, Alternating(1.2, 1.1, 1.3)),
            ("NumAcc3", 1_000_000.2, 0.1, 1e-8, Alternating(1_000_000.2, 1_000_000.1, 1_000_000.3)),
            ("NumAcc4", 10_000_000.2, 0.1, 1e-7, Alternating(10_000_000.2, 10_000_000.1, 10_000_000.3)),
        ];
        return new("Mean and deviation of repeats, NumAcc1 to NumAcc4", "NIST StRD NumAcc1, NumAcc2, NumAcc3, NumAcc4", Standing.Read,
        [
            .. sets.SelectMany(set =>
            {
                var mean = Fit(set.Readings.Select(reading => (1.0, reading))).Slope;
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
