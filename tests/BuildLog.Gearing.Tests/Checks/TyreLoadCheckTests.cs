using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// Load index 94 is 670 kg a tyre (Directive 92/23/EEC): 1340 kg an axle.
/// Source of the limit: the load index table, Directive 92/23/EEC; 1.10, FMVSS 120, S5.1.2.
/// </remarks>
public sealed class TyreLoadCheckTests
{
    [Theory]
    [InlineData(1340, false, Verdict.Fits)]
    [InlineData(1350, false, Verdict.Clash)]
    [InlineData(1340, true, Verdict.Clash)]
    [InlineData(1218, true, Verdict.Fits)]
    public void The_sum_of_the_tyres_against_the_axle(double mass, bool truck, Verdict verdict)
        => Assert.Equal(verdict, Find(Tyres with { PassengerOnTruck = truck }, 800, mass)[1].Verdict);

    // 1350 / 2 = 675 kg: LI 95 (690).
    [Fact]
    public void The_index_that_would_do_is_named()
    {
        var finding = Find(Tyres, 800, 1350)[1];

        Assert.Equal("The rear axle carries 1350 kg; its tyres (205/65R15 94H) may carry 1340 kg.", finding.Says);
        Assert.Equal(["tyres of load index 95 or more", "an axle load of 1340 kg or less"], finding.Cures);
    }

    // LI 120/116: 1250 kg in twins, 5000 an axle.
    [Fact]
    public void Twin_tyres_carry_by_their_second_figure()
    {
        var twins = Set("LT235/85R16 120/116Q") with { TwinRear = true };

        Assert.Equal([Verdict.Fits, Verdict.Fits], Find(twins, 2700, 4900).Select(finding => finding.Verdict));
        Assert.Equal(Verdict.Clash, Find(twins, 2700, 5100)[1].Verdict);
    }

    // 5100 kg on four are 1275 a tyre: LI 117 (1285), the second figure.
    [Fact]
    public void The_index_of_twins_is_the_second_figure()
    {
        var rear = Find(Set("LT235/85R16 120/116Q") with { TwinRear = true }, 2700, 5100)[1];

        Assert.Equal(["tyres of load index 117 or more, the second figure", "an axle load of 5000 kg or less"], rear.Cures);
        Assert.StartsWith("The rear axle carries 5100 kg", rear.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Passenger_tyres_on_a_truck_are_called_so()
        => Assert.Contains(" may carry 1218 kg, as passenger tyres on a truck.", Find(Tyres with { PassengerOnTruck = true }, 800, 1340)[1].Says, StringComparison.Ordinal);

    // A marking with one figure says nothing of twins; one with none nothing at all.
    [Fact]
    public void What_the_marking_does_not_say_is_read_off_the_side_wall()
    {
        var twin = Find(Tyres with { TwinRear = true }, 800, 1340)[1];

        Assert.Equal(Verdict.Open, twin.Verdict);
        Assert.Equal(["read the figures behind the size on the side wall, such as 94H"], twin.Cures);
        Assert.Contains("the load index for twin tyres is not known", twin.Says, StringComparison.Ordinal);
        Assert.Contains("the load index is not known", Find(Set("205/65R15"), 800, 800)[1].Says, StringComparison.Ordinal);
        Assert.Contains("the front axle was not weighed", Find(Tyres, null, 800)[0].Says, StringComparison.Ordinal);
    }

    // Four tyres of load index 60 carry 250 kg each.
    [Fact]
    public void A_vehicle_heavier_than_all_its_tyres_carry_clashes_without_its_axles_weighed()
    {
        var finding = Assert.Single(CheckCase.Look(new TyreLoadCheck(), InventedCar.Plain with { Tyres = Set("155/80R13 60S"), Load = new() { Mass = Kilograms(1500) } }, OwnersGoals.None));

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.Equal("The vehicle's mass is 1500 kg; all of its tyres together (155/80R13 60S) may carry 1000 kg.", finding.Says);
        Assert.Equal(["tyres that together may carry 1500 kg or more; which axle needs how much, the axles' masses tell"], finding.Cures);
    }

    [Fact]
    public void What_all_tyres_carry_together_one_axle_may_still_be_too_heavy_with()
    {
        var finding = Assert.Single(CheckCase.Look(new TyreLoadCheck(), InventedCar.Plain with { Tyres = Tyres, Load = new() { Mass = Kilograms(1500) } }, OwnersGoals.None));

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Equal("Whether the tyres carry their axles cannot be said: all together may carry 2680 kg and the vehicle's mass is 1500 kg, but the axles were not weighed.", finding.Says);
        Assert.Equal(["weigh the axles one by one"], finding.Cures);
    }

    [Fact]
    public void A_whole_mass_beside_one_weighed_axle_still_clashes_with_all_tyres()
        => Assert.Equal([Verdict.Fits, Verdict.Open, Verdict.Clash], CheckCase.Look(new TyreLoadCheck(), InventedCar.Plain with { Tyres = Set("155/80R13 60S"), AxleMasses = new(Kilograms(400)), Load = new() { Mass = Kilograms(1500) } }, OwnersGoals.None).Select(finding => finding.Verdict));

    // Without a start on one, the hill to hold is the hill: sin(atan 0.10) = 0.0995; 1800 · 0.0995 · 0.25 = 44.8 kg.
    [Fact]
    public void The_hill_to_hold_is_told_where_none_is_to_start_on()
    {
        var car = InventedCar.Plain with
        {
            Tyres = Tyres,
            AxleMasses = new(Kilograms(800), Kilograms(1000)),
            Load = new() { GravityHeight = InventedCar.Exactly(0.6), Wheelbase = InventedCar.Exactly(2.4) },
        };
        string Rear(OwnersGoals goals) => CheckCase.Look(new TyreLoadCheck(), car, goals)[1].Says;
        var hill = OwnersGoals.None with { Hill = HillGoal.Read("10 %", "60 km/h").OrRefuse() };

        Assert.Contains(" Up a hill of 10 % it carries 1040 kg", Rear(hill), StringComparison.Ordinal);
        Assert.Contains(" Up a hill of 20 % it carries 1069 kg", Rear(hill with { HillStart = HillStartGoal.Read("20 %").OrRefuse() }), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_axle_has_its_own_pair()
        => Assert.Equal([Verdict.Clash, Verdict.Fits], Find(Tyres with { FrontPair = Set("155/80R13 79S") }, 900, 900).Select(finding => finding.Verdict));

    // sin(atan 0.20) = 0.19612; 1800 · 0.19612 · 0.6/2.4 = 88.25 kg move onto the rear, and cos, 0.98058, of what stands on it on the level presses on the hill.
    [Fact]
    public void What_the_owners_hill_moves_onto_the_lower_axle_is_told()
    {
        var car = InventedCar.Plain with
        {
            Tyres = Tyres,
            AxleMasses = new(Kilograms(800), Kilograms(1000)),
            Load = new() { GravityHeight = InventedCar.Exactly(0.6), Wheelbase = InventedCar.Exactly(2.4) },
        };
        var findings = CheckCase.Look(new TyreLoadCheck(), car, OwnersGoals.None with { HillStart = HillStartGoal.Read("20 %").OrRefuse() });

        Assert.EndsWith(" Up a hill of 20 % it carries 1069 kg while that lasts; judged is the load on the level.", findings[1].Says, StringComparison.Ordinal);
        Assert.EndsWith(" Down a hill of 20 % it carries 873 kg while that lasts; judged is the load on the level.", findings[0].Says, StringComparison.Ordinal);
    }

    [Fact]
    public void An_axle_that_was_not_weighed_is_sent_to_the_weighbridge()
    {
        var finding = Find(Tyres, null, 800)[0];

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Contains("weighbridge", Assert.Single(finding.Cures), StringComparison.Ordinal);
    }

    [Fact]
    public void A_size_without_its_load_index_is_read_again() => Assert.Equal(Verdict.Open, Find(Set("205/65R15"), 800, 800)[1].Verdict);

    [Fact]
    public void Masses_that_were_never_asked_for_say_nothing() => Assert.Empty(new TyreLoadCheck().Look(InventedCar.Plain with { Tyres = Tyres }, OwnersGoals.None));

    private static TyreSet Tyres => Set("205/65R15 94H");

    private static TyreSet Set(string size) => new("tyres", null, TyreSizeText.Read(size).OrRefuse());

    private static List<Finding> Find(TyreSet tyres, double? front, double? rear)
        => [.. new TyreLoadCheck().Look(InventedCar.Plain with { Tyres = tyres, AxleMasses = new(Kilograms(front), Kilograms(rear)) }, OwnersGoals.None)];

    private static Known? Kilograms(double? mass) => mass is { } kilograms ? InventedShaft.Known(kilograms) : null;
}
