using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Tyres;
using BuildLog.Gearing.YardCards;
using Xunit;

namespace BuildLog.Gearing.Tests.YardCards;

public sealed class RollEdgesTests
{
    private static readonly Window Wanted = new(1.95, 2.10);

    // By hand, a wheel mark without error: the edge is off by 1.95996 · 2 mm / √3 = 2.2632 mm, however far it is rolled.
    [Fact]
    public void Under_a_vehicle_and_without_an_error_of_the_mark_the_edges_are_off_by_the_tape_alone()
    {
        var edges = RollEdges.Of(Wanted, Wanted, 3, new(Loaded: true, Tape: 0.002, Align: 0));

        Assert.Equal(5.85 + 0.0022632, edges.Yes!.Value.Low, 1e-7);
        Assert.Equal(6.30 - 0.0022632, edges.Yes!.Value.High, 1e-7);
        Assert.Equal(5.85 - 0.0022632, edges.Possible.Low, 1e-7);
        Assert.Equal(6.30 + 0.0022632, edges.Possible.High, 1e-7);
    }

    // A second route: the roll-out itself, of a roll that ends exactly there.
    [Theory]
    [InlineData(true, Construction.Radial, 3)]
    [InlineData(true, Construction.Radial, 5)]
    [InlineData(false, Construction.Radial, 3)]
    [InlineData(false, Construction.Bias, 3)]
    public void At_an_edge_the_interval_of_the_rolling_circumference_just_touches_the_limit(bool loaded, Construction construction, int turns)
    {
        var how = new RollOutPrecision(loaded, construction);
        var edges = RollEdges.Of(Wanted, Wanted, turns, how);

        Assert.Equal(Wanted.Low, Rolled(edges.Yes!.Value.Low).Low, 1e-9);
        Assert.Equal(Wanted.High, Rolled(edges.Yes!.Value.High).High, 1e-9);
        Assert.Equal(Wanted.Low, Rolled(edges.Possible.Low).High, 1e-9);
        Assert.Equal(Wanted.High, Rolled(edges.Possible.High).Low, 1e-9);

        Gearing.Measurements.Interval Rolled(double distance) => RollOut.Of([new(turns, distance, "rolled")], how).RollingCircumference.Interval95;
    }

    [Fact]
    public void A_loose_wheel_leaves_more_between_yes_and_no()
    {
        var (standing, loose) = (RollEdges.Of(Wanted, Wanted, 3, new(Loaded: true)), RollEdges.Of(Wanted, Wanted, 3, new(Loaded: false)));

        Assert.True(Between(loose) > 3 * Between(standing));
    }

    [Fact]
    public void An_open_side_stays_open_and_without_a_sure_window_no_roll_means_yes()
    {
        var edges = RollEdges.Of(Window.AtMost(2.1), null, 3, new(Loaded: true));

        Assert.Null(edges.Yes);
        Assert.Equal(double.NegativeInfinity, edges.Possible.Low);
    }

    private static double Between(RollEdges edges) => edges.Possible.High - edges.Possible.Low - (edges.Yes!.Value.High - edges.Yes.Value.Low);
}
