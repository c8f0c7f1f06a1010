using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// 205/65R15: 381 + 2 · 133.25 = 647.5 mm high, as a label says it, to 1 %.
/// Source of the limit: the owner's limit; 1 % between tyres of one marking, no source.
/// </remarks>
public sealed class TyreDiameterCheckTests
{
    [Theory]
    [InlineData("670 mm", Verdict.Fits)]
    [InlineData("650 mm", Verdict.Watch)]
    [InlineData("630 mm", Verdict.Clash)]
    public void A_tyre_is_no_higher_than_the_owner_allows(string most, Verdict verdict)
        => Assert.Equal(verdict, CheckCase.Find(new TyreDiameterCheck(), InventedCar.OnLabelledTyres(), AtMost(most)).Verdict);

    // 650 mm against 647.5 ± 12.7: a loaded roll-out tells no diameter. A loose wheel that covers 2.0342 m a turn stands 647.5 mm high, ± 1 mm.
    [Fact]
    public void A_watch_is_settled_by_a_loose_wheel_and_not_by_the_roll_out_that_is_there()
    {
        var car = InventedCar.OnLabelledTyres();
        var rolled = car with { Tyres = car.Tyres! with { RollingCircumference = InventedCar.Exactly(InventedCar.Of(1.975, 0.002)) } };
        var watch = CheckCase.Find(new TyreDiameterCheck(), rolled, AtMost("650 mm"));

        Assert.Equal((Verdict.Watch, "roll one of the wheels loose along the floor: its way a turn over π is the diameter"), (watch.Verdict, watch.SettledBy));

        var loose = CheckCase.Find(new TyreDiameterCheck(), rolled with { Tyres = rolled.Tyres! with { FreeCircumference = InventedCar.Exactly(InventedCar.Of(2.0342, 0.0016)) } }, AtMost("650 mm"));
        Assert.Equal((Verdict.Fits, null), (loose.Verdict, loose.SettledBy));
        Assert.Equal("205/65R15 stands 648 mm high, as a loose wheel rolled; wanted 650 mm or less.", loose.Says);
    }

    [Fact]
    public void Front_tyres_of_their_own_are_judged_as_well()
    {
        var car = InventedCar.OnLabelledTyres();

        Assert.Equal(2, CheckCase.Look(new TyreDiameterCheck(), car with { Tyres = car.Tyres! with { FrontPair = car.Tyres } }, AtMost("670 mm")).Count);
    }

    [Fact]
    public void Without_a_limit_nothing_and_without_a_size_open()
    {
        Assert.Empty(CheckCase.Look(new TyreDiameterCheck(), InventedCar.OnLabelledTyres()));
        Assert.Equal(Verdict.Open, CheckCase.Find(new TyreDiameterCheck(), InventedCar.Plain, AtMost("670 mm")).Verdict);
    }

    private static OwnersGoals AtMost(string most) => CheckCase.NoGoals with { TyreDiameter = LengthLimit.ReadTyreDiameter(most).OrRefuse() };
}
