namespace BuildLog.Gearing.Measurements;

/// <summary>Coverage factors for a 95 % interval.</summary>
public static class StudentT
{
    /// <summary>The 97.5 % point of the normal distribution.</summary>
    public const double Normal975 = 1.959963984540054;

    /// <summary>t such that value ± t·u covers 95 %, for ν effective degrees of freedom.</summary>
    /// <remarks>Source: JCGM 100:2008, G.3 and Table G.2. Valid for ν &gt; 0; ν is not truncated to a whole number.</remarks>
    public static double Factor95(double degreesOfFreedom)
    {
        // Above this the difference from the normal point is below one part in ten million.
        if (degreesOfFreedom > 1e7) return Normal975;

        return MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, degreesOfFreedom, 0.975);
    }

    /// <summary>Natural logarithm of the density of a Student variable about <paramref name="centre"/> with scale u; normal for infinite ν.</summary>
    internal static double LogDensity(double x, double centre, double u, double degreesOfFreedom)
        => degreesOfFreedom > 1e7
            ? MathNet.Numerics.Distributions.Normal.PDFLn(centre, u, x)
            : MathNet.Numerics.Distributions.StudentT.PDFLn(centre, u, degreesOfFreedom, x);
}
