using BuildLog.Data.Costs;
using BuildLog.Data.Drivelines;
using BuildLog.Data.Goals;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using Xunit;

namespace BuildLog.Data.Tests.Drivelines;

/// <summary>By hand: 110 km/h on 2.04 m tyres is 14.98 turns a second; × 4.00 × 60 = 3595 rev/min, × 3.00 = 2696.</summary>
public sealed class TheDifferenceOfTwoDays : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Names_the_parts_and_what_they_do_for_the_goals_and_cost()
    {
        var vehicle = test.Vehicle("Brindle");
        test.Shop.Add(new CruiseGoalEntry(vehicle) { Speed = "110 km/h", EngineSpeed = "2700 rpm" });
        test.Shop.Fit(test.Gearbox("1.00"), vehicle, Position.Transmission, new(2026, 1, 1));
        test.Shop.Fit(test.Wheels("2.04 m"), vehicle, Position.Tyres, new(2026, 1, 1));
        test.Shop.Fit(test.Axle("short", "4.00"), vehicle, Position.RearAxle, new(2026, 1, 1));
        test.Shop.Fit(test.Axle("long", "3.00"), vehicle, Position.RearAxle, new(2026, 5, 3));
        test.Shop.Add(new Cost(vehicle) { Date = new(2026, 5, 3), What = "long axle", Amount = Money.Of(18_000, Currency.Euro) });
        var difference = test.Shop.Difference(vehicle, new(2026, 2, 1), new(2026, 6, 1));
        var change = Assert.Single(difference.Changes);
        Assert.Equal((Position.RearAxle, "short", "long"), (change.Position, change.Removed!.Name, change.Fitted!.Name));
        var effect = difference.Effect(test.Shop.GoalsOf(vehicle));
        Assert.Equal(3595, 60 * effect.Before.CruiseEngineSpeed!.Value, 1.0);
        Assert.Equal(2696, 60 * effect.After.CruiseEngineSpeed!.Value, 1.0);
        Assert.Equal((1, 0), (effect.Before.Clashes, effect.After.Clashes));
        Assert.True(effect.After.Findings[Verdict.Fits] > 0);
        var swap = test.Shop.History(vehicle)[^1].Effect(test.Shop.GoalsOf(vehicle));
        foreach (var told in (SwapEffect[])[effect, swap])
        {
            Assert.Empty(told.Before.Spent);
            Assert.Equal(Money.Of(18_000, Currency.Euro), Assert.Single(told.After.Spent));
        }

        Assert.Empty(test.Shop.Difference(vehicle, new(2026, 5, 3), new(2026, 6, 1)).Changes);
    }
}
