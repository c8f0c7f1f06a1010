using BuildLog.Data.Components;
using BuildLog.Data.Goals;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Data.Tests.Drivelines;

/// <summary>Top gear direct, 2 m a turn, 90 km/h: 25 m/s, 12.5 wheel turns a second, 750 a minute; so rev/min = 750 · axle.</summary>
public sealed class HistoryOfSwaps : IDisposable
{
    private readonly TestShop test = new();
    private readonly Vehicle vehicle;

    public HistoryOfSwaps()
    {
        vehicle = test.Vehicle("Brindle");
        test.Shop.Add(new CruiseGoalEntry(vehicle) { Speed = "90 km/h", EngineSpeed = "2500 rpm", Tolerance = "300 rpm" });
        test.Shop.Fit(test.Gearbox("3.00", "1.50", "1.00"), vehicle, Position.Transmission, new(2026, 1, 1), "1 000");
        test.Shop.Fit(test.Wheels("2.000 m"), vehicle, Position.Tyres, new(2026, 1, 2));
    }

    public void Dispose() => test.Dispose();

    [Fact]
    public void Shows_the_cruise_and_the_clashes_before_and_after()
    {
        var (low, high) = (Teeth("low", 40, 10), Teeth("high", 36, 12));
        test.Shop.Fit(low, vehicle, Position.RearAxle, new(2026, 2, 1), "1 100", "what was there");
        test.Shop.Fit(high, vehicle, Position.RearAxle, new(2026, 3, 1), "1 200", "too busy");
        test.Shop.TakeOff(high, new(2026, 4, 1), "1 300", "seal leaks");

        var goals = test.Shop.GoalsOf(vehicle);
        var axles = test.Shop.History(vehicle).Where(swap => swap.Position == Position.RearAxle).ToList();
        Assert.Equal([(null, "low"), ("low", "high"), ("high", null)], axles.Select(swap => (swap.Removed?.Name, swap.Fitted?.Name)));
        Assert.Equal(["what was there", "too busy", "seal leaks"], axles.Select(swap => swap.Reason));
        Assert.Equal(["1 100 km", "1 200 km", "1 300 km"], axles.Select(swap => swap.Odometer?.InWords));

        // 750 · 4 = 3000 is outside 2200 to 2800; 750 · 3 = 2250 is inside; the tyre's last digit moves it by less than 1.
        Assert.Equal([(null, 3000), (3000, 2250), (2250, null)], axles.Select(swap => (Rpm(swap.Effect(goals).Before.CruiseEngineSpeed), Rpm(swap.Effect(goals).After.CruiseEngineSpeed))));
        Assert.Equal([(0, 1), (1, 0), (0, 0)], axles.Select(swap => (swap.Effect(goals).Before.Clashes, swap.Effect(goals).After.Clashes)));
    }

    [Fact]
    public void Shares_the_errors_of_what_stayed_so_that_they_cancel_in_the_difference()
    {
        test.Shop.Fit(Teeth("low", 40, 10), vehicle, Position.RearAxle, new(2026, 2, 1));
        test.Shop.Fit(Teeth("high", 36, 12), vehicle, Position.RearAxle, new(2026, 3, 1));
        var effect = test.Shop.History(vehicle)[^1].Effect(test.Shop.GoalsOf(vehicle));
        var share = effect.After.CruiseEngineSpeed! / effect.Before.CruiseEngineSpeed!;
        Assert.Equal(0.75, share.Value, 1e-12);
        Assert.Equal(0, share.StandardUncertainty, 1e-12);
        Assert.NotEqual(0, effect.After.CruiseEngineSpeed!.StandardUncertainty);
    }

    [Fact]
    public void Of_a_vehicle_without_goals_says_no_engine_speed()
    {
        var bare = test.Vehicle("Tansy");
        test.Shop.Fit(Teeth("low", 40, 10), bare, Position.RearAxle, new(2026, 2, 1));
        Assert.Null(Assert.Single(test.Shop.History(bare)).Effect(test.Shop.GoalsOf(bare)).After.CruiseEngineSpeed);
    }

    [Fact]
    public void A_front_driven_vehicle_is_computed_through_its_front_axle()
    {
        test.Shop.Fit(Teeth("rear", 40, 10), vehicle, Position.RearAxle, new(2026, 2, 1));
        test.Shop.Fit(Teeth("front", 36, 12), vehicle, Position.FrontAxle, new(2026, 2, 1));
        var then = () => test.Shop.DrivelineOn(test.Shop.FindVehicle("Brindle"), new(2026, 2, 1)).Driveline;
        Assert.Equal(4, then().DrivingAxle!.Ratio!.Value.Value);
        test.Shop.Change(vehicle, v => v.DrivesInFront = true);
        Assert.Equal(3, then().DrivingAxle!.Ratio!.Value.Value);
    }

    private static int? Rpm(Measured? engineSpeed) => engineSpeed is null ? null : (int)Math.Round(engineSpeed.Value * 60);

    private AxleComponent Teeth(string name, int ring, int pinion) => test.Shop.Add(new AxleComponent { Name = name, Teeth = new Teeth(ring, pinion) });
}
