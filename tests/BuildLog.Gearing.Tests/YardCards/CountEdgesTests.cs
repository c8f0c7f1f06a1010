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

    // By hand, a = 0.25/√3, b = 0, W = 10: A = 1.95996 · 0.144338 / 10 = 0.0282897. Below, ρ = 0.05/2.90: 2.907562 − 2.85 = 0.057562 = √((0.0172414 · 2.907562)² + A²);
    // above, ρ = 0.05/3.16: 3.21 − 3.152653 = 0.057347 = √((0.0158228 · 3.152653)² + A²). Straight on each other it would be 2.928290 and 3.131710. Half of W.
    [Fact]
    public void A_yes_leaves_the_squares_of_both_errors_room_and_a_no_that_of_the_count_alone()
    {
        var edges = CountEdges.Of(Wanted, new Window(2.90, 3.16), 10, Wheels.OneHeld, new CountPrecision(0.25, 0));

        Assert.Equal(5 * 2.907562, edges.Yes!.Value.Low, 1e-5);
        Assert.Equal(5 * 3.152653, edges.Yes!.Value.High, 1e-5);
        Assert.Equal(CountEdges.Of(Wanted, null, 10, Wheels.OneHeld, new CountPrecision(0.25, 0)).Possible, edges.Possible);
    }

    // A count read without error is sure where the other parts let an exact one be.
    [Fact]
    public void Without_an_error_of_the_count_yes_is_what_is_sure()
    {
        var yes = CountEdges.Of(Wanted, new Window(2.90, 3.16), 10, Wheels.OneHeld, new CountPrecision(0, 0)).Yes!.Value;

        Assert.Equal(14.5, yes.Low, 1e-9);
        Assert.Equal(15.8, yes.High, 1e-9);
    }

    [Fact]
    public void An_open_side_of_what_is_sure_stays_open()
    {
        Assert.Equal(double.PositiveInfinity, CountEdges.Of(Window.AtLeast(3), Window.AtLeast(3.1), 10, Wheels.OneHeld, new CountPrecision()).Yes!.Value.High);
        Assert.Equal(double.NegativeInfinity, CountEdges.Of(Window.AtMost(3), Window.AtMost(2.9), 10, Wheels.OneHeld, new CountPrecision()).Yes!.Value.Low);
    }

    [Fact]
    public void Without_a_sure_window_no_count_means_yes()
        => Assert.Null(CountEdges.Of(Wanted, null, 10, Wheels.OneHeld, new CountPrecision(0.25, 0.02)).Yes);

    // A sure window narrower than two edges of the reading: no count is surely inside it. An open side stays open.
    [Fact]
    public void A_window_too_narrow_to_be_sure_has_no_yes()
    {
        Assert.Null(CountEdges.Of(new(3, 3.04), new Window(3, 3.04), 10, Wheels.OneHeld, new CountPrecision(0.25, 0)).Yes);
        Assert.NotNull(CountEdges.Of(new(3, 3.06), new Window(3, 3.06), 10, Wheels.OneHeld, new CountPrecision(0.25, 0)).Yes);
        Assert.Equal(double.PositiveInfinity, CountEdges.Of(Window.AtLeast(3), null, 10, Wheels.OneHeld, new CountPrecision(0.25, 0.02)).Possible.High);
        Assert.Equal(double.NegativeInfinity, CountEdges.Of(Window.AtMost(3), null, 10, Wheels.OneHeld, new CountPrecision(0.25, 0.02)).Possible.Low);
    }

    // The interval of a count just touches a limit from outside where no begins, as it does from inside where yes does.
    [Theory]
    [InlineData(Wheels.OneHeld)]
    [InlineData(Wheels.Together)]
    public void Where_no_begins_the_interval_just_touches_the_window_from_outside(Wheels wheels)
    {
        var how = new CountPrecision(0.25, 0.02);
        var wheelSum = wheels == Wheels.OneHeld ? 10.0 : 20;
        var edges = CountEdges.Of(Wanted, Wanted, 10, wheels, how);
        double Ratio(double turns) => turns * 2 / wheelSum;
        double Half(double turns) => 1.959963984540054 * TurnCount.UncertaintyOver(wheelSum, Ratio(turns), wheels, how);

        Assert.Equal(2.85, Ratio(edges.Possible.Low) + Half(edges.Possible.Low), 1e-9);
        Assert.Equal(3.21, Ratio(edges.Possible.High) - Half(edges.Possible.High), 1e-9);
        Assert.Equal(3.21, Ratio(edges.Yes!.Value.High) + Half(edges.Yes.Value.High), 1e-9);
    }

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
