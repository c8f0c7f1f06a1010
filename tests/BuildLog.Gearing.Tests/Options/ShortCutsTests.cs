using System.Numerics;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <summary>Small shops in which a short cut of the search has to come to what the checks say one by one.</summary>
/// <remarks>
/// 108 km/h on 2.00 m are 15 wheel turns a second: 4.10 turns the engine at 61.5 rev/s. A cable of 8 to 22 teeth behind 4.10 on 2.00 m turns 0.7455 times a metre: a dial that wants
/// 0.70 shows 1.065 of the truth, 6.1 % above the lower limit.
/// </remarks>
public sealed class ShortCutsTests
{
    private static readonly OwnersGoals Cruise = new([InventedCar.Goal("108 km/h", "3000 rpm", "10 %")]);

    private static readonly CandidateParts Here = CandidateParts.InPlace(InventedCar.Plain);

    // Two findings are open wherever one looks: the case's low, and the cruise that nobody has wished.
    [Fact]
    public void What_cannot_be_said_of_any_combination()
        => PlainLoops.EndAlike(
            InventedCar.Plain with { TransferCase = new("case", InventedCar.Exactly(1), null) }, OwnersGoals.None with { OverallLow = OverallLowGoal.Read("11").OrRefuse() }, RandomShop.Of(12, 1, 1, 2, 2));

    [Fact]
    public void A_cruise_in_a_gear_that_no_box_has() => PlainLoops.EndAlike(InventedCar.Plain, new([InventedCar.Goal("110 km/h", "2400 rpm", "", "5")]), RandomShop.Of(13, 2, 1, 3, 3));

    // In place it turns slower than that, and is no further from it for being so.
    [Fact]
    public void A_cruise_that_may_be_as_slow_as_it_likes() => PlainLoops.EndAlike(InventedCar.Plain, new([InventedCar.Goal("110 km/h", "4000 rpm", "at most")]), RandomShop.Of(15, 1, 1, 3, 3));

    // No axle makes an overall low of 900 or 400 km/h, and nobody knows what stands on the driven wheels.
    [Fact]
    public void What_clashes_and_what_is_open_whatever_is_fitted()
        => PlainLoops.EndAlike(
            InventedLoad.Car with { Load = InventedLoad.Exact with { DrivenShare = null } },
            OwnersGoals.None with { OverallLow = OverallLowGoal.Read("900").OrRefuse(), TopSpeed = TopSpeedGoal.Read("400 km/h").OrRefuse(), HillStart = HillStartGoal.Read("25 %").OrRefuse() },
            RandomShop.Of(14, 1, 1, 3, 4));

    // 60 N·m reach 118 km/h with a drag area of 0.8 m², which is known to 0.3; 3.5 · 4.10 is 14.35, and the axles are known to 0.1.
    [Fact]
    public void What_is_to_watch_whatever_is_fitted()
        => PlainLoops.EndAlike(
            InventedLoad.WithTorque(60) with { Load = InventedLoad.Exact with { DragArea = InventedCar.Exactly(InventedCar.Of(0.8, 0.15)) } },
            OwnersGoals.None with { OverallLow = OverallLowGoal.Read("14.4").OrRefuse(), TopSpeed = TopSpeedGoal.Read("118 km/h").OrRefuse() },
            Here with { Axles = [.. Here.Axles, Axle("one", InventedCar.Of(4.12, 0.05)), Axle("two", InventedCar.Of(4.08, 0.05))] });

    // A top of 0.8 ± 4 % turns 49.2 ± 2.0 rev/s (u): by 1.96 it is within 45 to 55, by the 4.30 of two degrees of freedom it need not be.
    [Fact]
    public void A_gear_that_few_readings_tell()
        => PlainLoops.EndAlike(
            InventedCar.Plain, Cruise,
            Here with { Gearboxes = [.. Here.Gearboxes, new("box", new("box", [InventedCar.Gear("1", 3.5), InventedCar.Gear("2", Counted(0.8, 0.032, 2))]), Pool.Owned)] });

    // 2 % by 1.96 leave it above its limit, by 4.30 they do not.
    [Fact]
    public void A_dial_that_few_readings_tell() => PlainLoops.EndAlike(WithDial(Counted(0.7, 0.014, 2)), Cruise, Here with { Axles = [.. Here.Axles, Axle("other", 3.9)] });

    // Dial and axle are known to 2.5 % each: together 1.96 · 3.5 % = 6.9 %. The axle comes a little nearer to the cruise.
    [Fact]
    public void A_dial_and_an_axle_that_are_not_known_well()
        => PlainLoops.EndAlike(WithDial(InventedCar.Of(0.7, 0.0175)), Cruise, Here with { Axles = [.. Here.Axles, Axle("rough", InventedCar.Of(4.09, 0.1))] });

    // A measured distance found 1.5 of the truth, which is unlawful though the gears make 1.065 of it; the tyres that were on then stand first of a second row of lanes, or among others.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_a_distance_found_counts_for_the_parts_that_were_on(bool first)
    {
        var others = Enumerable.Range(1, Vector<double>.Count).Select(k => new Candidate<TyreSet>($"set {k}", InventedCar.Rolling(2 + (0.01 * k)), Pool.Owned)).ToList();
        var car = WithDial(0.7);

        PlainLoops.EndAlike(car with { Driven = new(InventedCar.Exactly(1.5), car) }, Cruise, Here with { Tyres = first ? [.. others, .. Here.Tyres] : [others[0], .. Here.Tyres, .. others.Skip(1)] });
    }

    // A distance found 1.05, which is lawful, whatever the gears make: 1.49, nothing that is known, 1.065 ± 0.6. The other axle is nearer to the cruise than the overdrive (50 rev/s against 49.2), and its dial
    // is as the gears make it.
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(null, 0)]
    [InlineData(0.7, 0.2)]
    public void What_a_distance_found_is_not_thrown_out_for_what_the_gears_make(double? wants, double u)
    {
        var car = WithDial(wants is { } known ? InventedCar.Of(known, u) : null);
        var parts = Here with
        {
            Overdrives = [.. Here.Overdrives, new("unit", new("unit", InventedCar.Exactly(0.8)), Pool.Owned)],
            Axles = [.. Here.Axles, Axle("near", 10 / 3.0)],
        };

        PlainLoops.EndAlike(car with { Driven = new(InventedCar.Exactly(1.05), car) }, Cruise, parts);
    }

    // One curve is half of it; then 512 rows, and something is said at each 256.
    [Fact]
    public void It_tells_how_far_it_is_now_and_then()
    {
        List<double> told = [];
        var parts = Here with { Axles = [.. Here.Axles, .. Enumerable.Range(1, 511).Select(k => Axle("axle", 3 + (0.001 * k)))] };

        _ = new SeparableSearch(InventedCar.Plain, OwnersGoals.None, parts, progress: new Heard(told.Add)).Run(new Heard(told.Add), 1, TestContext.Current.CancellationToken);

        Assert.Equal([0.5, 0.75, 1], told);
    }

    [Fact]
    public void It_ends_where_it_is_called_off()
    {
        var off = new CancellationToken(canceled: true);

        Assert.ThrowsAny<OperationCanceledException>(() => new SeparableSearch(InventedCar.Plain, Cruise, Here, cancel: off));
        Assert.ThrowsAny<OperationCanceledException>(() => new SeparableSearch(InventedCar.Plain, Cruise, Here).Run(null, 1, off));
    }

    // The axle that its torque breaks is left out of a second round: one curve is half of each.
    [Fact]
    public void Each_round_is_its_share_of_the_whole()
    {
        List<double> told = [];
        var weak = new Candidate<Axle>("weak", InventedCar.Axle(3.28) with { TorqueRating = InventedCar.Exactly(500) }, Pool.Owned);

        OptionSearch.Run(InventedLoad.Car, Cruise, Here with { Axles = [.. Here.Axles, weak] }, new Heard(told.Add), 1, TestContext.Current.CancellationToken);

        Assert.Equal([0.25, 0.75], told);
    }

    private sealed class Heard(Action<double> hear) : IProgress<double>
    {
        public void Report(double value) => hear(value);
    }

    private static Driveline WithDial(Measured? wants)
        => InventedCar.Plain with { Speedometer = new("dial", wants is null ? null : InventedCar.Exactly(wants), SpeedometerDrive.Gears(8, 22)) };

    private static Measured Counted(double value, double u, double freedom) => Measured.From(value, new Input("count", u, new Evidence("count"), freedom));

    private static Candidate<Axle> Axle(string name, Measured ratio) => new(name, InventedCar.Axle(ratio), Pool.Owned);
}
