using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class PilotCheckTests
{
    [Theory]
    [InlineData(15.05, 15.00, Verdict.Fits)]
    [InlineData(15.00, 15.00, Verdict.Fits)]
    [InlineData(15.30, 15.00, Verdict.Watch)]
    [InlineData(14.90, 15.00, Verdict.Clash)]
    public void A_spigot_runs_in_the_pilot_with_a_little_play(double bore, double spigot, Verdict verdict)
        => Assert.Equal(verdict, CheckCase.Find(new PilotCheck(), Car(bore, spigot)).Verdict);

    [Fact]
    public void A_bearing_that_takes_the_spigot_is_the_cure()
        => Assert.Equal(["a pilot bearing with a bore of 15.01 to 15.14 mm"], CheckCase.Find(new PilotCheck(), Car(14.9, 15)).Cures);

    // A spigot known to 0.4 mm orders no bearing to a hundredth.
    [Fact]
    public void The_cure_has_no_more_digits_than_the_spigot_is_known_by()
        => Assert.Equal(
            ["a pilot bearing with a bore of 15.0 ± 0.4 mm"],
            CheckCase.Find(new PilotCheck(), InventedJoint.Of(new() { PilotBore = InventedJoint.Millimetres(14) }, new() { Spigot = InventedShaft.Known(InventedCar.Of(0.015, 0.0002)) })).Cures);

    // Half a hundredth is two calipers that show the same; play of more than 0.15 mm is a bush's matter.
    [Theory]
    [InlineData(14.996, Verdict.Fits)]
    [InlineData(14.99, Verdict.Clash)]
    [InlineData(15.14, Verdict.Fits)]
    [InlineData(15.16, Verdict.Watch)]
    public void The_play_may_be_so_much(double bore, Verdict verdict) => Assert.Equal(verdict, CheckCase.Find(new PilotCheck(), Car(bore, 15)).Verdict);

    [Fact]
    public void Too_much_play_is_cured_by_a_bush_and_rests_on_practice()
    {
        var loose = CheckCase.Find(new PilotCheck(), Car(15.3, 15));

        Assert.Equal(["a pilot bush with a bore of 15.01 to 15.14 mm and a running fit"], loose.Cures);
        Assert.Equal("common practice for the play of a pilot bush", loose.Source);
        Assert.Equal("geometry", CheckCase.Find(new PilotCheck(), Car(14.9, 15)).Source);
    }

    [Fact]
    public void A_joint_half_measured_asks_for_the_rest()
    {
        Assert.Equal(["measure the input shaft's spigot with a caliper"], CheckCase.Find(new PilotCheck(), Car(15, null)).Cures);
        Assert.Equal(["measure the pilot bearing's bore with a caliper"], CheckCase.Find(new PilotCheck(), Car(null, 15)).Cures);
        Assert.Empty(CheckCase.Look(new PilotCheck(), Car(null, null)));
    }

    private static Driveline Car(double? bore, double? spigot)
        => InventedJoint.Of(new() { PilotBore = InventedJoint.Millimetres(bore) }, new() { Spigot = InventedJoint.Millimetres(spigot) });
}
