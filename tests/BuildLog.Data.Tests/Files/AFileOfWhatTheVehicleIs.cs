using BuildLog.Data.Hunting;
using BuildLog.Data.Plans;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>WhatTheVehicleIs.sql is the demo shop as the ninth schema held it: a plan kept six of the values beside parts, and no hunt knew its plan.</summary>
public sealed class AFileOfWhatTheVehicleIs : IDisposable
{
    private readonly EarlierShop earlier = new("WhatTheVehicleIs.sql");

    public void Dispose() => earlier.Dispose();

    [Fact]
    public void Hunts_for_a_plan_of_any_value_from_then_on()
    {
        var vehicle = earlier.Shop.Vehicles().Single(one => one.Name == "Brindle");
        var hunt = earlier.Shop.Wanted(vehicle).Single();
        Assert.Null(hunt.PlanId);

        var plan = new Plan(vehicle) { Name = "crawler", Date = new(2026, 11, 28), Wishes = [new(Wish.OverallLow, "40"), new(Wish.RollingResistance, "0.02")] };
        earlier.Shop.Hunt(new WantedPart(vehicle, WantedKind.Axle) { Title = "short axle" }, plan);
        earlier.Shop.Change(hunt, edited => edited.PlanId = plan.Id);

        Assert.All(earlier.Shop.Wanted(vehicle), one => Assert.Equal(plan.Id, one.PlanId));
        Assert.Equal([new(Wish.RollingResistance, "0.02"), new(Wish.OverallLow, "40")], Assert.Single(earlier.Shop.Plans(vehicle)).Wishes);
        earlier.AssertSoundButForItsFiles();
    }
}
