using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tests.Drivelines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Speedometers;

public sealed class ReadingTests
{
    // Read right on 2.00 m; on 2.10 m a turn covers 5 % more ground than it thinks: 100 km/h are shown as 95.2.
    [Fact]
    public void Taller_tyres_make_it_read_low()
    {
        var after = new Reading(1).After(4.10, 4.10, 2.00, 2.10);

        Assert.Equal(95.238, after.Shown(100).Value, 1e-3);
        Assert.Equal(100, after.Real(after.Shown(100)).Value, 1e-9);
    }

    // 3.55 for 2.73, told in the trade as "slow": 2.73 / 3.55 = 0.769.
    [Fact]
    public void A_taller_axle_makes_it_read_low()
        => Assert.Equal(0.769, new Reading(1).After(3.55, 2.73, 2, 2).Share.Value, 5e-4);

    // 1000 wanted, 1090 got: a box of 0.917.
    [Fact]
    public void A_correction_box_undoes_the_error()
        => Assert.Equal(0.917, Reading.Of(1090, 1000).Correction.Value, 5e-4);

    // Second route: work the drive out anew with the new parts.
    [Fact]
    public void A_swap_is_the_same_as_working_it_out_anew()
        => Gen.Select(Gen.Double[2.5, 6], Gen.Double[2.5, 6], Gen.Double[1.6, 3], Gen.Double[1.6, 3]).Sample((axle1, axle2, tyre1, tyre2) =>
        {
            Reading With(double axle, double tyre) => Reading.Of(CableTurns.PerMetre(SpeedometerDrive.Gears(8, 21), axle, 1, tyre), 0.62);

            Assert.Equal(With(axle2, tyre2).Share.Value, With(axle1, tyre1).After(axle1, axle2, tyre1, tyre2).Share.Value, 1e-9);
        });

    // The axle changed, the tyres did not: what is not known of the tyre does not come in a second time.
    [Fact]
    public void What_stays_fitted_cancels()
    {
        var tyre = InventedCar.Of(2, 0.02, "tyre");

        Assert.True(new Reading(1).After(4.1, 3.7, tyre, tyre).Share.IsExact);
    }

    [Fact]
    public void A_speedometer_that_never_reads_low_and_not_far_too_high_is_lawful_all_the_way()
    {
        Assert.All(ErrorCurve.Of(new(1.13)), point => Assert.True(point.Lawful));
        Assert.All(ErrorCurve.Of(new(0.999)), point => Assert.False(point.Lawful));
    }

    // 1.15: at 30 km/h 34.5 of 37 allowed; 1.15 v = 1.1 v + 4 at 80 km/h.
    [Fact]
    public void One_that_reads_far_too_high_breaks_the_law_from_some_speed_on()
    {
        var curve = ErrorCurve.Of(new(1.15));

        Assert.Equal([30, 40, 50, 60, 70, 80], curve.Where(point => point.Lawful).Select(point => point.Real));
        Assert.Equal(130, curve[^1].Real);
        Assert.Equal(19.5, curve[^1].Error.Value, 1e-9);
    }

    [Fact]
    public void The_share_is_lawful_exactly_where_the_whole_curve_is()
        => Gen.Double[0.9, 1.3].Sample(share
            => Assert.Equal(SpeedometerLaw.Share().Contains(share), ErrorCurve.Of(new(share), 1).All(point => point.Lawful)));

    [Fact]
    public void A_step_of_nothing_is_refused_and_one_as_long_as_the_curve_is_not()
    {
        Assert.Throws<RefusedException>(() => ErrorCurve.Of(new(1), 0));
        Assert.Throws<RefusedException>(() => ErrorCurve.Of(new(1), 101));
        Assert.Equal([30, 130], ErrorCurve.Of(new(1), 100).Select(point => point.Real));
        Assert.Equal([30, 100], ErrorCurve.Of(new(1), 70).Select(point => point.Real));
    }

    // 104 shown of 100 driven, by a satellite or by posts alike.
    [Fact]
    public void What_was_watched_is_shown_over_real()
    {
        Assert.Equal(1.04, Reading.Observed(104, 100).Share.Value, 1e-12);
        Assert.Equal(0.04, Reading.OdometerObserved(10.4, 10).OdometerError.Value, 1e-12);
    }
}
