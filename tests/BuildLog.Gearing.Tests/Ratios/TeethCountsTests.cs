using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

public sealed class TeethCountsTests
{
    [Fact]
    public void Two_counts_that_agree_are_the_teeth() => Assert.Equal(new Teeth(41, 10), TeethCounts.Agreed([new(41, 10), new(41, 10)]));

    [Fact]
    public void One_count_is_not_enough()
        => Assert.Contains("Count the teeth twice", Assert.Throws<RefusedException>(() => TeethCounts.Agreed([new(41, 10)])).Message, StringComparison.Ordinal);

    [Fact]
    public void Counts_that_differ_are_both_named()
        => Assert.Contains("41/10 and 43/10", Assert.Throws<RefusedException>(() => TeethCounts.Agreed([new(41, 10), new(41, 10), new(43, 10)])).Message, StringComparison.Ordinal);
}
