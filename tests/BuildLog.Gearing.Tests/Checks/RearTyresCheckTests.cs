using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: none: a matter of what was entered.</remarks>
public sealed class RearTyresCheckTests
{
    private static readonly TyreSet Front = InventedCar.Rolling(1.90) with { Name = "narrow pair" };
    private static readonly Driveline OnlyInFront = InventedCar.Plain with { Tyres = null, LoneFrontTyres = Front };

    [Fact]
    public void A_front_set_alone_is_open_and_says_how_to_get_the_rest()
    {
        var finding = Assert.Single(new RearTyresCheck().Look(OnlyInFront, OwnersGoals.None));

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Equal("What the vehicle does on narrow pair cannot be said: only front tyres are fitted.", finding.Says);
        Assert.Equal(["fit the rear tyres, or fit this set as tyres if all wheels have it"], finding.Cures);
    }

    [Fact]
    public void A_cruise_that_needs_the_tyres_asks_for_the_rear_ones_and_not_for_any()
    {
        var cruise = new CruiseCheck().Look(OnlyInFront, CheckCase.Cruise("100 km/h", "2600")).Single();

        Assert.Equal(Verdict.Open, cruise.Verdict);
        Assert.Contains("only front tyres are fitted", cruise.Says, StringComparison.Ordinal);
        Assert.Contains("fit the rear tyres, or fit this set as tyres if all wheels have it", cruise.Cures);
    }

    [Fact]
    public void Nothing_is_said_of_a_rear_set_with_or_without_a_front_one_nor_of_no_tyres()
    {
        Driveline[] others = [InventedCar.Plain, InventedCar.Plain with { Tyres = InventedCar.Rolling(2) with { FrontPair = Front } }, InventedCar.Plain with { Tyres = null }];

        Assert.All(others, car => Assert.Empty(new RearTyresCheck().Look(car, OwnersGoals.None)));
    }
}
