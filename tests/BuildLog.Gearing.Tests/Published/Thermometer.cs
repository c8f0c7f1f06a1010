using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>JCGM 100:2008, H.3: thermometer correction <c>b = y₁ + y₂ (t − 20 °C)</c>, fitted to Table H.6.</summary>
/// <remarks>
/// About the mean temperature, mean correction and slope are independent: two inputs carry everything, and the correlation of y₁ and y₂
/// follows from what they share.
/// </remarks>
internal static class Thermometer
{
    // JCGM 100:2008, Table H.6: t in °C, b in °C.
    private static readonly (double T, double B)[] Table =
    [
        (21.521, -0.171), (22.012, -0.169), (22.512, -0.166), (23.003, -0.159), (23.507, -0.164), (23.999, -0.165),
        (24.513, -0.156), (25.002, -0.157), (25.503, -0.159), (26.010, -0.161), (26.511, -0.160),
    ];

    public static PublishedSet Calibration()
    {
        var evidence = new Evidence("thermometer");
        var (t, b) = (Table.Average(row => row.T), Table.Average(row => row.B));
        var fitted = LineThroughOrigin.Fit([.. Table.Select(row => (Measured.Exact(row.T - t), Measured.Exact(row.B - b)))], evidence).Slope;

        // The mean takes a degree of freedom too: n − 2 = 9 instead of our fit's n − 1 = 10.
        var uSlope = fitted.StandardUncertainty * Math.Sqrt(10 / 9.0);
        var s = uSlope * Math.Sqrt(Table.Sum(row => Math.Pow(row.T - t, 2)));
        var mean = Measured.From(b, new Input("mean correction", s / Math.Sqrt(Table.Length), evidence, 9));
        var slope = Measured.From(fitted.Value, new Input("slope", uSlope, evidence, 9));
        Measured At(double temperature) => mean + (slope * (temperature - t));

        var intercept = At(20);
        var correlation = Measured.Covariance(intercept, slope) / (intercept.StandardUncertainty * slope.StandardUncertainty);
        var at30 = At(30);

        return new("Thermometer: intercept, slope, correlation, prediction at 30 °C", "JCGM 100:2008, H.3", Standing.Read,
        [
            Figure.ToPlaces("y1", -0.1712, 4, intercept.Value),
            Figure.ToPlaces("u(y1)", 0.0029, 4, intercept.StandardUncertainty),
            Figure.ToPlaces("y2", 0.00218, 5, slope.Value),
            Figure.ToPlaces("u(y2)", 0.00067, 5, slope.StandardUncertainty),
            Figure.ToPlaces("r(y1, y2)", -0.93, 2, correlation),
            Figure.ToPlaces("b(30 °C)", -0.1494, 4, at30.Value),
            Figure.ToPlaces("u(b(30 °C))", 0.0041, 4, at30.StandardUncertainty),
        ]);
    }
}
