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
    [InlineData(double.MaxValue, true)]
    public void Nothing_may_be_a_drag(double value, bool can)
    {
        Assert.Equal(can, Takes(() => new Known(value, Source.Measured).NotBelowZero("A drag area", "0.8 m²")));
        Assert.Equal(can, Takes(() => ((Measured)value).NotBelowZero("A drag area", "0.8 m²")));
        Assert.Equal(can, Takes(() => value.NotBelowZero("A drag area", "0.8 m²")));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_plain_number_is_one(double value)
    {
        Assert.False(Takes(() => value.NotBelowZero("A drag area", "0.8 m²")));
        Assert.False(Takes(() => value.AboveZero("A length", "1 m")));
    }

    [Fact]
    public void What_nobody_knows_can_be()
    {
        Assert.Null(((Known?)null).AboveZero("A length", "1 m"));
        Assert.Null(((Known?)null).AboveZero("A length", "1 m", 5));
        Assert.Null(((Known?)null).NotBelowZero("A drag area", "0.8 m²"));
    }

    [Theory]
    [InlineData(5, true)]
    [InlineData(5.1, false)]
    [InlineData(0, false)]
    [InlineData(double.NaN, false)]
    public void The_most_there_is_can_be(double value, bool can)
    {
        Assert.Equal(can, Takes(() => value.AboveZero("A length, m,", "1 m", 5)));
        Assert.Equal(can, Takes(() => new Typed(value, Units.Metre, "5 m").AboveZero("A length, m,", "1 m", 5)));
        Assert.Equal(can, double.IsFinite(value) && Takes(() => new Known(value, Source.Measured).AboveZero("A length, m,", "1 m", 5)));
    }

    [Fact]
    public void What_can_be_comes_back_as_it_was()
    {
        var (known, typed) = (new Known(2, Source.Measured), new Typed(2, Units.Metre, "2 m"));

        Assert.Same(known, known.AboveZero("A length", "1 m"));
        Assert.Same(known, known.AboveZero("A length", "1 m", 5));
        Assert.Same(known, known.NotBelowZero("A length", "1 m"));
        Assert.Same(typed, typed.AboveZero("A length", "1 m", 5));
        Assert.Equal((2.0, 2.0), (2.0.AboveZero("A length", "1 m"), 2.0.NotBelowZero("A length", "1 m")));
    }

    [Fact]
    public void A_refusal_says_what_and_its_range()
    {
        Assert.Equal("A length is 0 or more, not -1.", Says(() => (-1.0).NotBelowZero("A length", "1 m")));
        Assert.Equal("A length is more than 0, not -1.", Says(() => (-1.0).AboveZero("A length", "1 m")));
        Assert.Equal("A length is more than 0 and at most 5, not 6.", Says(() => 6.0.AboveZero("A length", "1 m", 5)));

        static string Says(Func<object> make) => Assert.Throws<RefusedException>(make).Message;
    }

    private static bool Takes(Func<object> make) => Record.Exception(make) is not RefusedException;
}
