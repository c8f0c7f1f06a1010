using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>JCGM 100:2008, H.1: end-gauge calibration, <c>l = l_s + d − l_s (δα θ + α_s δθ)</c>, lengths in nm.</summary>
internal static class EndGauge
{
    public static PublishedSet Calibration()
    {
        var evidence = new Evidence("end gauge");
        Measured Of(string name, double value, double u, double freedom = double.PositiveInfinity)
            => Measured.From(value, new Input(name, u, evidence, freedom));

        var standard = Of("l_s", 50_000_623, 25, 18);
        var difference = Of("repeats", 215, 5.8, 24) + Of("comparator, random", 0, 3.9, 5) + Of("comparator, systematic", 0, 6.7, 8);
        var expansion = Of("α_s", 11.5e-6, 2e-6 / Math.Sqrt(3));
        var temperature = Of("mean θ", -0.1, 0.2) + Of("cyclic Δ", 0, 0.5 / Math.Sqrt(2));
        var expansionDifference = Of("δα", 0, 1e-6 / Math.Sqrt(3), 50);
        var temperatureDifference = Of("δθ", 0, 0.05 / Math.Sqrt(3), 2);

        var length = standard + difference - (standard * ((expansionDifference * temperature) + (expansion * temperatureDifference)));
        double Contribution(string name) => length.Budget().Single(line => line.Input.Name == name).Contribution;

        return new("End gauge: length, uncertainty, effective degrees of freedom", "JCGM 100:2008, H.1", Standing.Read,
        [
            Figure.ToPlaces("l", 50_000_838, 0, length.Value),
            Figure.ToPlaces("u(l), first order", 32, 0, length.StandardUncertainty),
            Figure.ToPlaces("u(d)", 9.7, 1, difference.StandardUncertainty),

            // The print works on from the rounded 9.7: 9.7⁴ / (5.8⁴/24 + 3.9⁴/5 + 6.7⁴/8) = 25.6; unrounded it is 25.4.
            new Figure("ν(d)", 25.6, difference.DegreesOfFreedom, 0.2),

            // 16.75, cut to a whole number in print.
            new Figure("ν(l), cut", 16, Math.Floor(length.DegreesOfFreedom), 0),
            Figure.ToPlaces("contribution of δα", 2.9, 1, Contribution("δα")),
            Figure.ToPlaces("contribution of δθ", 16.6, 1, Contribution("δθ")),
        ]);
    }
}
