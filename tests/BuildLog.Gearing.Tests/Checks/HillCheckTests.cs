using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: the owner's goal; without one 3 % in the cruising gear, common practice, no source.</remarks>
public sealed class HillCheckTests
{
    // The invented load holds 12.35 % at 108 km/h in top (PullTests), u of the losses 0.02/0.9504 of 2448 N: 51.5 N, 0.36 %.
    [Theory]
    [InlineData("10 %", Verdict.Fits)]
    [InlineData("12.5 %", Verdict.Watch)]
    [InlineData("20 %", Verdict.Clash)]
    public void The_owners_hill_is_a_limit(string gradient, Verdict verdict) => Assert.Equal(verdict, Find(InventedLoad.Car, gradient).Verdict);

    // 20 %: θ = 0.19740; 14709.98 · (0.014 · 0.98058 + 0.19612) + 441 = 3527.8 N, over 12.2417 N a N·m: 288.2 N·m, with what the losses leave open up to 301. Third holds
    // (200 · 1.4 · 4.10 · 0.9216 · π − 441)/14710 = 0.19597: 18.5 %, not enough; second, 2.1: 0.30893 → 31.0 %, but turns 7749, beyond the curve.
    [Fact]
    public void The_cure_is_the_torque_it_takes_and_a_gear_that_holds_it()
    {
        var finding = Find(InventedLoad.Car, "20 %");

        Assert.Equal("At 108 km/h in top (4) it holds a hill of 12.3 ± 0.8 %; wanted 20 % or more.", finding.Says);
        Assert.Equal("301 N·m or more from the engine at 3690 rev/min", Assert.Single(finding.Cures));
        Assert.StartsWith("change down to gear 3: ", Find(InventedLoad.Car, "15 %", "80 km/h", 200).Cures.Last(), StringComparison.Ordinal);
    }

    // 0.44 · 1.85 m²; √((1.85 · 0.04)² + (0.44 · 0.15)²) / √3 = 0.057, at 95 % 0.112, rounded up.
    [Fact]
    public void What_was_assumed_of_the_vehicle_is_said()
    {
        var load = InventedLoad.Exact with { DragArea = BodyClass.All.Single(body => body.Name == "saloon, 1960–79").DragArea() };

        Assert.EndsWith(" Assumed: a drag area of 0.81 ± 0.12 m² (saloon, 1960–79).", Find(InventedLoad.Car with { Load = load }, "20 %").Says, StringComparison.Ordinal);
        Assert.EndsWith(
            "(saloon, 1960–79) and a rolling resistance of 0.011 ± 0.003 (modern radial).",
            Find(InventedLoad.Car with { Load = load with { RollingResistance = RollingClass.All[0].Coefficient() } }, "20 %").Says, StringComparison.Ordinal);
    }

    [Fact]
    public void A_watch_says_what_would_settle_it()
    {
        var car = InventedLoad.Car with { Load = InventedLoad.Exact with { Mass = CheckCase.Known(InventedCar.Of(1500, 100, "mass", _ => "weigh it")) } };

        Assert.Equal("weigh it; that alone would narrow it, not settle it", Find(car, "12.3 %").SettledBy);
    }

    [Fact]
    public void What_is_missing_is_named_with_the_cheapest_way_to_it()
    {
        var finding = Find(InventedCar.Plain, "6 %");

        Assert.Equal((Verdict.Open, Because.MissingInput), (finding.Verdict, finding.Because));
        Assert.Equal(
            "The hill held at 108 km/h cannot be said: no engine is fitted and the mass is not known and the drag area is not known and the rolling resistance is not known.",
            finding.Says);
        Assert.Equal(4, finding.Cures.Count);
    }

    [Fact]
    public void A_torque_curve_that_ends_too_early_is_open_with_the_engine_speed_it_lacks()
    {
        var finding = Find(InventedLoad.Car with { Engine = new("four") { Torque = InventedLoad.Flat(200, 1100) } }, "6 %", "30 km/h");

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Equal("enter the engine's torque at 1025 rev/min", Assert.Single(finding.Cures));
    }

    // 12.35 % are more than 3 %; with 60 N·m at 108 km/h: p = (734.5 − 441)/14710 = 0.01995, 0.6 %.
    [Theory]
    [InlineData(200, Verdict.Fits)]
    [InlineData(60, Verdict.Watch)]
    public void Without_a_hill_goal_three_per_cent_in_reserve_are_common_practice(double torque, Verdict verdict)
    {
        var finding = Assert.Single(new HillCheck().Look(InventedLoad.WithTorque(torque), CheckCase.Cruise("108 km/h", "3690")));

        Assert.Equal(verdict, finding.Verdict);
        Assert.NotEqual(Because.Outside, finding.Because);
    }

    [Fact]
    public void Without_any_goal_or_with_a_number_missing_and_no_hill_wanted_it_says_nothing()
    {
        Assert.Empty(new HillCheck().Look(InventedLoad.Car, CheckCase.NoGoals));
        Assert.Empty(new HillCheck().Look(InventedCar.Plain, CheckCase.Cruise("108 km/h", "3690")));
    }

    private static Finding Find(Driveline car, string gradient, string speed = "108 km/h", double? torque = null)
        => Assert.Single(new HillCheck().Look(
            torque is { } t ? car with { Engine = InventedLoad.WithTorque(t).Engine } : car, CheckCase.NoGoals with { Hill = HillGoal.Read(gradient, speed).OrRefuse() }));
}
