using BuildLog.Gearing.Measurements;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Measurements;

public sealed class StudentTTests
{
    [Fact]
    public void More_degrees_of_freedom_never_ask_for_more_coverage_and_none_for_less_than_the_normal()
        => Gen.Select(Gen.Double[1, 200], Gen.Double[0.1, 50]).Sample((freedom, more) =>
        {
            var factor = StudentT.Factor95(freedom);

            Assert.True(StudentT.Factor95(freedom + more) < factor);
            Assert.True(factor > StudentT.Normal975);
        });

    // The standard normal density at zero is 1/√(2π); Student's with one degree of freedom is Cauchy's, 1/π at zero.
    [Fact]
    public void The_density_is_the_normal_for_stated_limits_and_cauchys_for_one_degree_of_freedom()
    {
        Assert.Equal(-0.5 * Math.Log(2 * Math.PI), StudentT.LogDensity(0, 0, 1, double.PositiveInfinity), 1e-12);
        Assert.Equal(-Math.Log(Math.PI), StudentT.LogDensity(0, 0, 1, 1), 1e-12);
    }
}
