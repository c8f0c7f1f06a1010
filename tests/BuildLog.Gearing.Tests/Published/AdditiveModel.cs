using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>JCGM 101:2008, 9.2: the sum of four inputs, by the law of propagation of uncertainty.</summary>
internal static class AdditiveModel
{
    public static PublishedSet Sums()
    {
        var normal = Sum(1, 1, 1, 1);
        var uneven = Sum(1, 1, 1, 10);
        return new("Sum of four inputs, first order", "JCGM 101:2008, 9.2", Standing.Read,
        [
            Figure.ToPlaces("9.2.2, y", 0, 0, normal.Value),
            Figure.ToPlaces("9.2.2, u(y)", 2.0, 1, normal.StandardUncertainty),
            Figure.ToPlaces("9.2.2, half the 95 % interval", 3.92, 2, normal.Expanded95),
            Figure.ToPlaces("9.2.4, u(y)", 10.1, 1, uneven.StandardUncertainty),
        ]);
    }

    // The print's half-width for 9.2.4, 19.9, was not read: 1.96 · 10.149 = 19.89.
    public static PublishedSet SumsFromMemory() => new("Sum of four uneven inputs, half the interval", "JCGM 101:2008, 9.2.4", Standing.FromMemory,
    [
        Figure.ToPlaces("9.2.4, half the 95 % interval", 19.9, 1, Sum(1, 1, 1, 10).Expanded95),
    ]);

    private static Measured Sum(params double[] uncertainties)
    {
        var evidence = new Evidence("sum");
        return uncertainties.Select(u => Measured.From(0, new Input("input", u, evidence))).Aggregate((a, b) => a + b);
    }
}
