using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Gearing.Tests.Drivelines;

/// <summary>What no part can have, whatever it is of.</summary>
public sealed class PossibleTests
{
    [Theory]
    [InlineData(0, false)]
    [InlineData(-1, false)]
    [InlineData(1e-9, true)]
    public void Nothing_is_no_length_and_no_ratio(double value, bool can)
    {
        Assert.Equal(can, Takes(() => new Known(value, Source.Measured).AboveZero("A length", "1 m")));
        Assert.Equal(can, Takes(() => ((Measured)value).AboveZero("A length", "1 m")));
        Assert.Equal(can, Takes(() => value.AboveZero("A length", "1 m")));
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(-1e-9, false)]
    public void Nothing_may_be_a_drag(double value, bool can) => Assert.Equal(can, Takes(() => ((Measured)value).NotBelowZero("A drag area", "0.8 m²")));

    [Fact]
    public void What_nobody_knows_can_be() => Assert.Null(((Known?)null).AboveZero("A length", "1 m"));

    [Theory]
    [InlineData(5, true)]
    [InlineData(5.1, false)]
    [InlineData(double.NaN, false)]
    public void The_most_there_is_can_be(double value, bool can) => Assert.Equal(can, Takes(() => value.AboveZero("A length, m,", "1 m", 5)));

    [Fact]
    public void A_refusal_says_what_and_its_range()
    {
        Assert.Equal("A length is more than 0, not -1.", Says(() => (-1.0).AboveZero("A length", "1 m")));
        Assert.Equal("A length is more than 0 and at most 5, not 6.", Says(() => 6.0.AboveZero("A length", "1 m", 5)));

        static string Says(Func<object> make) => Assert.Throws<RefusedException>(make).Message;
    }

    private static bool Takes(Func<object> make) => Record.Exception(make) is not RefusedException;
}
