using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>JCGM GUM-5, example 9: torque calibration, line through the origin; x applied, mean indication, its deviation, repeats.</summary>
internal static class TorqueThroughOrigin
{
    private static readonly (double X, double Mean, double Deviation, int Repeats)[] Table =
    [
        (0.101, 0.095, 0.0055, 6), (0.201, 0.1966, 0.0052, 6), (0.305, 0.3016, 0.0041, 6), (0.501, 0.4983, 0.0041, 6),
        (1.001, 1.0083, 0.0098, 6), (3.0, 3.0266, 0.0082, 6), (4.001, 4.0466, 0.0121, 6), (5.007, 5.0666, 0.0379, 3),
    ];

    public static PublishedSet Both() => new("Torque calibration, line through the origin", "JCGM GUM-5, example 9", Standing.Read,
    [
        // Each mean weighs as many readings as it is made of.
        Figure.ToPlaces("unweighted slope", 1.0107, 4, Slope(row => 1 / Math.Sqrt(row.Repeats))),
        Figure.ToPlaces("weighted slope", 1.0085, 4, Slope(row => row.Deviation / Math.Sqrt(row.Repeats))),
    ]);

    private static double Slope(Func<(double X, double Mean, double Deviation, int Repeats), double> error)
    {
        var evidence = new Evidence("torque");
        return LineThroughOrigin
            .Fit([.. Table.Select(row => (Measured.Exact(row.X), Measured.From(row.Mean, new Input("indication", error(row), evidence))))], evidence)
            .Slope.Value;
    }
}
