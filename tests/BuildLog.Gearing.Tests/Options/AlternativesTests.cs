using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

public sealed class AlternativesTests
{
    // Worn or new, the size stays what it is marked.
    [Fact]
    public void Wear_makes_no_other_neighbour()
    {
        var fitted = On("31x10.50R15LT");
        var worn = fitted with { Tyres = fitted.Tyres! with { Size = fitted.Tyres.Size! with { Worn = 0.008 } } };

        Assert.Equal("32x10.50R15LT", Alternatives.TyreSizeUp(worn).Name);
    }

    [Theory]
    [InlineData("205/65R15", "215/65R15", "195/65R15")]
    [InlineData("31x10.50R15LT", "32x10.50R15LT", "30x10.50R15LT")]
    public void The_next_size_is_ten_millimetres_wider_or_an_inch_higher(string fitted, string up, string down)
    {
        Assert.Equal(up, Alternatives.TyreSizeUp(On(fitted)).Name);
        Assert.Equal(down, Alternatives.TyreSizeDown(On(fitted)).Name);
        Assert.Equal(TyreSizeText.Read(up).OrRefuse().RollingCircumference.Value, Alternatives.TyreSizeUp(On(fitted)).Driveline.Tyres!.RollingCircumference!.Value.Value, 1e-12);
    }

    [Theory]
    [InlineData("6.00-16")]
    [InlineData("555/45R22.5")]
    public void A_size_without_a_neighbour_is_a_sentence(string fitted)
        => Assert.Equal($"{fitted} has no next size in a series.", Assert.Throws<RefusedException>(() => Alternatives.TyreSizeUp(On(fitted))).Message);

    [Fact]
    public void Without_a_marking_there_is_no_next_size()
        => Assert.Contains("not known", Assert.Throws<RefusedException>(() => Alternatives.TyreSizeUp(InventedCar.Plain)).Message, StringComparison.Ordinal);

    // 100 km/h on 2.00 m through 4.10 are 56.94 rev/s, 3416.7 rev/min; times 0.78 2665, times 0.70 2392.
    [Theory]
    [InlineData("2665 rpm", "overdrive 0.78", 0.78)]
    [InlineData("2400 rpm", "overdrive 0.7", 0.70)]
    public void The_listed_overdrive_nearest_to_the_cruise(string wanted, string name, double ratio)
    {
        var (said, whole) = Alternatives.Overdrive(InventedCar.Plain, new([InventedCar.Goal("100 km/h", wanted)]));

        Assert.Equal((name, ratio), (said, whole.Overdrive!.Ratio!.Value.Value));
    }

    // 40/13 = 3.077 turns the engine at 27.778 · 3.077/2 = 42.735 rev/s.
    [Fact]
    public void The_listed_axle_nearest_to_the_cruise()
    {
        var (name, whole) = Alternatives.AxleForCruise(InventedCar.Plain, new([InventedCar.Goal("100 km/h", "2564 rpm")]));

        Assert.Equal("axle 3.08", name);
        Assert.Equal(40 / 13.0, whole.RearAxle!.Ratio!.Value.Value, 1e-12);
    }

    [Fact]
    public void Without_a_cruise_or_an_axle_nothing_is_nearest()
    {
        Assert.Equal("cruise", Code(() => Alternatives.AxleForCruise(InventedCar.Plain, OwnersGoals.None)));
        Assert.Equal("cruise", Code(() => Alternatives.Overdrive(InventedCar.Plain with { Tyres = null }, new([InventedCar.Goal("100 km/h", "2564 rpm")]))));
        Assert.Equal("nothing-fitted", Code(() => Alternatives.AxleForCruise(InventedCar.Plain with { RearAxle = null }, OwnersGoals.None)));
    }

    // Where nothing is asked for, a twentieth shorter than 4.10: from 4.305 on. An overall low of 17 in a first gear of 3.5: from 4.857 on.
    [Fact]
    public void The_tallest_listed_axle_that_pulls_away_as_wanted()
    {
        Assert.Equal(Tallest(4.305), Launch(InventedCar.Plain, OwnersGoals.None), 1e-12);
        Assert.Equal(Tallest(17 / 3.5), Launch(InventedCar.Plain, OwnersGoals.None with { OverallLow = OverallLowGoal.Read("17").OrRefuse() }), 1e-12);
    }

    // By hand, 100 N·m: 30 % takes 14 710 · (0.28735 + 0.014 · 0.95783) = 4424 N of 100 · 3.5 · 0.9216 · π · i, so i from 4.366 on; 6 % at 100 km/h takes
    // 14 710 · (0.059892 + 0.014 · 0.9982) + 378.1 = 1464.7 N of 100 · 0.9504 · π · i, so i from 4.906 on.
    [Fact]
    public void A_start_and_a_hill_ask_for_their_own_axle()
    {
        var weak = InventedLoad.WithTorque(100);

        Assert.Equal(Tallest(4.366), Launch(weak, OwnersGoals.None with { HillStart = HillStartGoal.Read("30 %").OrRefuse() }), 1e-12);
        Assert.Equal(Tallest(4.906), Launch(weak, OwnersGoals.None with { Hill = HillGoal.Read("6 %", "100 km/h").OrRefuse() }), 1e-12);
        Assert.Equal(
            Tallest(4.906),
            Launch(weak, OwnersGoals.None with { HillStart = HillStartGoal.Read("30 %").OrRefuse(), Hill = HillGoal.Read("6 %", "100 km/h").OrRefuse() }), 1e-12);
    }

    [Fact]
    public void Where_no_listed_axle_does_it_is_a_sentence()
    {
        Assert.Equal("launch", Code(() => Alternatives.AxleForLaunch(InventedCar.Plain, OwnersGoals.None with { OverallLow = OverallLowGoal.Read("900").OrRefuse() })));
        Assert.Equal("launch", Code(() => Alternatives.AxleForLaunch(InventedCar.Plain, OwnersGoals.None with { HillStart = HillStartGoal.Read("10 %").OrRefuse() })));
    }

    [Fact]
    public void Where_one_shaft_turns_both_axles_both_are_named()
    {
        var truck = InventedCar.Plain with { TransferCase = new("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)), FrontAxle = InventedCar.Axle(4.10) };

        Assert.Equal("both axles 3.08", Alternatives.AxleForCruise(truck, new([InventedCar.Goal("100 km/h", "2564 rpm")])).Name);
    }

    private static double Launch(Driveline car, OwnersGoals goals) => Alternatives.AxleForLaunch(car, goals).Driveline.RearAxle!.Ratio!.Value.Value;

    private static double Tallest(double from) => ListedRatios.Common.Select(teeth => teeth.Ratio).Where(ratio => ratio > from).Min();

    private static string Code(Func<object> of) => Assert.Throws<RefusedException>(of).Refusal.Code;

    private static Driveline On(string size)
    {
        var read = TyreSizeText.Read(size).OrRefuse();
        return InventedCar.Plain with { Tyres = new("tyres", InventedCar.Exactly(read.RollingCircumference), read) };
    }

    // 100 km/h on 2.00 m are 13.889 wheel turns a second: 3000 rev/min or less is 3.60 or less, and 39/11 is the listed one below it.
    [Fact]
    public void Where_the_wish_has_no_lower_end_the_nearest_axle_is_taken_and_not_the_longest()
    {
        var (_, whole) = Alternatives.AxleForCruise(InventedCar.Plain, new([InventedCar.Goal("100 km/h", "3000 rpm", CruiseGoal.AtMost)]));

        Assert.InRange(whole.DrivingAxle!.Ratio!.Value.Value, 3.5, 3.6);
    }
}
