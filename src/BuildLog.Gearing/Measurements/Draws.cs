namespace BuildLog.Gearing.Measurements;

/// <summary>Errors drawn from an input's own distribution.</summary>
/// <remarks>
/// <code>rectangular: ± √3 u;   normal: u z;   finite ν: u t(ν)</code>
/// <para>Source: JCGM 101:2008, 6.4.2 (rectangular), 6.4.7 (normal), 6.4.9 (t). The normal comes in pairs by Box and Muller.</para>
/// </remarks>
internal static class Draws
{
    public static void Fill(double[] errors, Input input, Random random)
    {
        var u = input.StandardUncertainty;
        if (input.Spread == Spread.Rectangular)
        {
            var halfWidth = Math.Sqrt(3) * u;
            for (var k = 0; k < errors.Length; k++) errors[k] = halfWidth * ((2 * random.NextDouble()) - 1);
        }
        else if (double.IsInfinity(input.DegreesOfFreedom))
        {
            for (var k = 0; k + 1 < errors.Length; k += 2)
            {
                var (sine, cosine) = Math.SinCos(2 * Math.PI * random.NextDouble());
                var radius = u * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble()));
                (errors[k], errors[k + 1]) = (radius * sine, radius * cosine);
            }
        }
        else if (u > 0)
        {
            MathNet.Numerics.Distributions.StudentT.Samples(random, errors, 0, u, input.DegreesOfFreedom);
        }
    }
}
