using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Drivelines;

/// <summary>What an engine's redline, torque curve and told peaks say of each other.</summary>
public sealed class EngineTests
{
    // The same torque up to 5000 rev/min: power rises to the end. The redline may be the same number by another way of reckoning.
    [Theory]
    [InlineData(null, true)]
    [InlineData(5500.0, true)]
    [InlineData(5000.001, true)]
    [InlineData(5000.000001, false)]
    [InlineData(5000.0, false)]
    [InlineData(4500.0, false)]
    public void Power_that_rises_to_the_end_of_the_curve_may_peak_beyond_it_unless_the_redline_ends_it(double? redline, bool may)
        => Assert.Equal(may, With(InventedLoad.Flat(200), redline).MayPeakBeyondItsCurve);

    // 600 at 3000, 250 at 5000; a curve drawn to told peaks knows its own; and nobody says anything of no curve.
    [Fact]
    public void Power_that_falls_or_is_drawn_does_not()
    {
        Assert.False(With(InventedLoad.Curve((1000, 200), (3000, 200), (5000, 50)), null).MayPeakBeyondItsCurve);
        Assert.False(With(TorqueCurve.Of(InventedLoad.Flat(200).Points, Source.Assumed), null).MayPeakBeyondItsCurve);
        Assert.False(With(null, 5000).MayPeakBeyondItsCurve);
    }

    [Theory]
    [InlineData(900.0, true)]
    [InlineData(1000.0, true)]
    [InlineData(1001.0, false)]
    [InlineData(null, false)]
    public void A_curve_of_which_the_engine_may_turn_at_no_point_begins_above_the_redline(double? redline, bool begins)
    {
        Assert.Equal(begins, With(InventedLoad.Flat(200), redline).BeginsAboveRedline);
        Assert.False(With(null, redline).BeginsAboveRedline);
    }

    [Fact]
    public void The_curves_peak_counts_before_one_that_is_told()
    {
        var told = new ToldPeak(300, null);

        Assert.Equal(200, (With(InventedLoad.Flat(200), null) with { ToldTorque = told }).PeakTorque!.Value);
        Assert.Equal(300, (With(null, null) with { ToldTorque = told }).PeakTorque!.Value);
        Assert.Null(With(null, null).PeakTorque);
    }

    private static Engine With(TorqueCurve? torque, double? redline) => new("four", Redline: redline is { } known ? InventedCar.Exactly(known / 60) : null) { Torque = torque };
}
