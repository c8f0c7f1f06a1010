using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

public sealed class SimpsonTrainTests
{
    // Equal sets, a = 36/80 = 0.45: 2.45, 1.45, reverse 1/0.45 = 2.222.
    [Fact]
    public void Equal_sets_make_2_plus_a_and_1_plus_a()
    {
        var train = new SimpsonTrain(new(80, 36), new(80, 36));

        Assert.Equal((2.45, 1.45), (Math.Round(train.First, 9), Math.Round(train.Second, 9)));
        Assert.Equal(-2.2222, train.Reverse, 1e-4);
    }

    // Second route: the speeds of both sets in first gear, from S ω_sun + R ω_ring = (R + S) ω_carrier, output at one turn.
    [Fact]
    public void First_of_unlike_sets_obeys_the_speeds_of_their_members()
    {
        var (input, output) = (new Planetary(70, 34), new Planetary(80, 36));
        const double Out = 1;
        var sun = -output.Ring * Out / output.Sun;
        var driving = (((input.Ring + input.Sun) * Out) - (input.Sun * sun)) / input.Ring;

        Assert.Equal(driving, new SimpsonTrain(input, output).First, 1e-12);
    }

    // Ratios as the trade quotes them, from memory.
    [Theory]
    [InlineData("2.52", "1.52", "1.92")]
    [InlineData("2.45", "1.45", "2.22")]
    [InlineData("2.46", "1.46", "2.17")]
    [InlineData("2.48", "1.48", "2.10")]
    public void Quoted_ratios_of_such_a_box_bind_each_other(string first, string second, string reverse) => Assert.True(CanBe(first, second, reverse));

    [Theory]
    [InlineData("2.25", "1.45", "2.22")]
    [InlineData("2.45", "1.54", "2.22")]
    [InlineData("2.45", "1.45", "1.94")]
    public void Two_digits_changed_about_are_found(string first, string second, string reverse) => Assert.False(CanBe(first, second, reverse));

    private static bool CanBe(string first, string second, string reverse) => SimpsonTrain.CanBe(Read(first), Read(second), Read(reverse));

    private static QuotedRatio Read(string text) => QuotedRatio.Read(text, RatioRange.Gear).OrRefuse();
}
