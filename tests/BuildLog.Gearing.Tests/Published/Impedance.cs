using BuildLog.Gearing.Measurements;
using MathNet.Numerics.Statistics;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>JCGM 100:2008, H.2: resistance and reactance from readings taken together, so that their errors go together.</summary>
internal static class Impedance
{
    // Table H.2: volts, milliamperes, radians.
    private static readonly double[] V = [5.007, 4.994, 5.005, 4.990, 4.999];
    private static readonly double[] I = [19.663, 19.639, 19.640, 19.685, 19.678];
    private static readonly double[] Phi = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];

    public static PublishedSet Simultaneous()
    {
        var (v, i, phi) = Together();
        var z = v / (i * 1e-3);
        var (cosine, sine) = (phi.Map(Math.Cos, -Math.Sin(phi.Value)), phi.Map(Math.Sin, Math.Cos(phi.Value)));
        var (r, x) = (z * cosine, z * sine);
        return new("Resistance and reactance, correlated readings", "JCGM 100:2008, H.2", Standing.Read,
        [
            Figure.ToPlaces("u(V)", 0.0032, 4, v.StandardUncertainty), Figure.ToPlaces("u(I), mA", 0.0095, 4, i.StandardUncertainty),
            Figure.ToPlaces("u(φ)", 0.00075, 5, phi.StandardUncertainty),
            Figure.ToPlaces("r(V, I)", -0.36, 2, Correlation(v, i)), Figure.ToPlaces("r(V, φ)", 0.86, 2, Correlation(v, phi)), Figure.ToPlaces("r(I, φ)", -0.65, 2, Correlation(i, phi)),
            Figure.ToPlaces("R", 127.732, 3, r.Value), Figure.ToPlaces("u(R)", 0.071, 3, r.StandardUncertainty),
            // Printed 219.847 from a mean that was carried with more places: 219.8465 before rounding.
            new Figure("X", 219.847, x.Value, 0.0006), new Figure("u(X)", 0.295, x.StandardUncertainty, 0.0006),
            Figure.ToPlaces("Z", 254.260, 3, z.Value), Figure.ToPlaces("u(Z)", 0.236, 3, z.StandardUncertainty),
            Figure.ToPlaces("r(R, X)", -0.59, 2, Correlation(r, x)), Figure.ToPlaces("r(R, Z)", -0.49, 2, Correlation(r, z)), Figure.ToPlaces("r(X, Z)", 0.99, 2, Correlation(x, z)),
        ]);
    }

    // Means with the covariances of the readings, made of three independent inputs (Cholesky's triangle).
    private static (Measured V, Measured I, Measured Phi) Together()
    {
        double[][] readings = [V, I, Phi];
        var covariance = MathNet.Numerics.LinearAlgebra.Double.DenseMatrix.Create(3, 3, (a, b) => readings[a].Covariance(readings[b]) / V.Length);
        var triangle = covariance.Cholesky().Factor;
        Input[] inputs = [.. Enumerable.Range(1, 3).Select(k => new Input($"direction {k}", 1, new Evidence("five sets of readings"), V.Length - 1))];
        Measured Mean(int row) => Measured.From(readings[row].Mean(), (inputs[0], triangle[row, 0]), (inputs[1], triangle[row, 1]), (inputs[2], triangle[row, 2]));
        return (Mean(0), Mean(1), Mean(2));
    }

    private static double Correlation(Measured a, Measured b) => Measured.Covariance(a, b) / (a.StandardUncertainty * b.StandardUncertainty);
}
