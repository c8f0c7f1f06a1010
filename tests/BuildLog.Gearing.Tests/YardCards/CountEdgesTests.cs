using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.YardCards;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.YardCards;

public sealed class CountEdgesTests
{
    private static readonly Window Wanted = new(2.85, 3.21);

    // By hand, a = 0: the edge is off by 1.95996 · (0.25/√3) / 2 = 0.141448 propshaft turns, however far one counts.
    [Theory]
    [InlineData(Wheels.OneHeld, 14.25, 16.05)]
    [InlineData(Wheels.Together, 28.5, 32.1)]
    public void Without_an_error_of_the_stop_the_edges_are_off_by_the_reading_alone(Wheels wheels, double low, double high)
    {
        var edges = CountEdges.Of(Wanted, Wanted, 10, wheels, new CountPrecision(0.25, 0));

        Assert.Equal(low + 0.141448, edges.Yes!.Value.Low, 1e-5);
        Assert.Equal(high - 0.141448, edges.Yes!.Value.High, 1e-5);
        Assert.Equal(low - 0.141448, edges.Possible.Low, 1e-5);
        Assert.Equal(high + 0.141448, edges.Possible.High, 1e-5);
    }

    [Theory]
    [InlineData(Wheels.OneHeld, 10)]
    [InlineData(Wheels.Together, 10)]
    [InlineData(Wheels.OneHeld, 30)]
    public void At_an_edge_the_interval_just_touches_the_limit(Wheels wheels, double turns)
    {
        var how = new CountPrecision(0.25, 0.02);
        var wheelSum = wheels == Wheels.OneHeld ? turns : 2 * turns;
        var ratio = CountEdges.Of(Wanted, Wanted, turns, wheels, how).Yes!.Value.Low * 2 / wheelSum;

        Assert.Equal(2.85, ratio - (1.959963984540054 * TurnCount.UncertaintyOver(wheelSum, ratio, wheels, how)), 1e-9);
    }

    [Fact]
    public void Without_a_sure_window_no_count_means_yes()
        => Assert.Null(CountEdges.Of(Wanted, null, 10, Wheels.OneHeld, new CountPrecision(0.25, 0.02)).Yes);

    [Fact]
    public void A_finer_reading_or_a_longer_count_leaves_less_between_yes_and_no()
        => Gen.Select(Gen.Double[2.5, 6], Gen.Double[0.2, 0.6], Gen.Double[0.05, 0.25], Gen.Int[10, 30]).Sample((low, width, readTo, turns) =>
        {
            var window = new Window(low, low + width);
            var between = Between(window, turns, readTo);

            Assert.True(Between(window, turns, readTo / 2) < between);
            Assert.True(Between(window, 2 * turns, readTo) < between);
        });

    // As a share of the turns: propshaft turns of possible beyond those of yes, over the count.
    private static double Between(Window window, int turns, double readTo)
    {
        var edges = CountEdges.Of(window, window, turns, Wheels.Together, new CountPrecision(readTo, 0.02));
        var yes = edges.Yes is { } sure ? sure.High - sure.Low : 0;
        return (edges.Possible.High - edges.Possible.Low - yes) / turns;
    }
}
