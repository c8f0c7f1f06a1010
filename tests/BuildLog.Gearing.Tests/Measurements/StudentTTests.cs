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
}
