using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// 205/60R15 sits on 5.5 to 7.5 in, measured on 6 (a tyre retailer's technical page).
/// Source of the limit: from memory: from ½ in narrower to 1 in wider for metric sizes.
/// </remarks>
public sealed class RimWidthCheckTests
{
    [Theory]
    [InlineData(5.5, Verdict.Fits)]
    [InlineData(7.5, Verdict.Fits)]
    [InlineData(5.0, Verdict.Watch)]
    [InlineData(8.0, Verdict.Watch)]
    public void A_rim_outside_the_band_is_a_watch_and_never_a_clash(double inches, Verdict verdict) => Assert.Equal(verdict, Find(inches).Verdict);

    [Fact]
    public void The_rims_that_would_do_are_named()
    {
        Assert.Equal("The rims are 8.00 in wide; 205/60R15 sits on 5.5 to 7.5 in, best on 6 in.", Find(8).Says);
        Assert.Equal(Because.UnverifiedLimit, Find(8).Because);
        Assert.Equal("rims of 5.5 to 7.5 in", Find(8).Cures[0]);
    }

    [Fact]
    public void Wheels_nobody_asked_for_say_nothing_and_those_not_measured_are_asked_for()
    {
        Assert.Empty(new RimWidthCheck().Look(Car(null), OwnersGoals.None));
        Assert.Equal(Verdict.Open, Assert.Single(new RimWidthCheck().Look(Car(new()), OwnersGoals.None)).Verdict);
    }

    private static Driveline Car(Wheel? wheel) => InventedCar.Plain with { Tyres = new TyreSet("tyres", null, TyreSizeText.Read("205/60R15").OrRefuse()) { Wheel = wheel } };

    private static Finding Find(double inches) => Assert.Single(new RimWidthCheck().Look(Car(new(InventedShaft.Known(inches * 0.0254))), OwnersGoals.None));
}
