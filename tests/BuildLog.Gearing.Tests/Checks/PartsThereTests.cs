using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <summary>Parts that have to be somewhere, and what nobody has looked at.</summary>
public sealed class PartsThereTests
{
    [Theory]
    [InlineData(Presence.Fitted, null, Verdict.Fits)]
    [InlineData(Presence.Absent, Presence.Fitted, Verdict.Fits)]
    [InlineData(Presence.Absent, null, Verdict.Open)]
    [InlineData(Presence.Absent, Presence.Absent, Verdict.Clash)]
    public void One_parking_brake_anywhere_is_enough(Presence? axle, Presence? box, Verdict verdict)
        => Assert.Equal(verdict, Assert.Single(Look(new ParkingBrakeCheck(), Car(axle, box))).Verdict);

    [Fact]
    public void A_parking_brake_nobody_looked_for_is_named_by_part()
    {
        Assert.Equal(["look at the gearbox for a lever, a cable or a drum"], Assert.Single(Look(new ParkingBrakeCheck(), Car(Presence.Absent, null))).Cures);
        Assert.Empty(Look(new ParkingBrakeCheck(), Car(null, null)));
    }

    [Fact]
    public void A_gearbox_has_its_linkage_or_nobody_can_change_gear()
    {
        Assert.Equal(Verdict.Fits, Assert.Single(Look(new ShiftLinkageCheck(), Linkage(Presence.Fitted))).Verdict);
        Assert.Equal(Verdict.Clash, Assert.Single(Look(new ShiftLinkageCheck(), Linkage(Presence.Absent))).Verdict);
        Assert.Empty(Look(new ShiftLinkageCheck(), Linkage(null)));
    }

    [Fact]
    public void What_nobody_looked_at_is_named_in_one_breath()
    {
        var finding = Assert.Single(Look(new NotLookedAtCheck(), InventedCar.Plain with { Engine = new("engine") }));

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Equal(
            "Nobody has looked at these yet: engine: bell-housing pattern, plate on the crankshaft, pilot bore, starter side, direction of rotation; "
                + "gearbox: bell-housing pattern, spigot, input spline, clutch-disc spline, starter opening, direction of rotation, shift linkage; "
                + "axle: parking brake.",
            finding.Says);
    }

    [Fact]
    public void What_one_side_tells_of_is_the_matter_of_its_own_check()
    {
        var looked = InventedCar.Plain with { Engine = new("engine") { Rear = new() { BellHousing = "six" } } };

        Assert.DoesNotContain("bell-housing", Assert.Single(Look(new NotLookedAtCheck(), looked)).Says, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bare_frame_asks_for_nothing() => Assert.Empty(Look(new NotLookedAtCheck(), new Driveline()));

    private static Driveline Car(Presence? axle, Presence? box) => InventedCar.Plain with
    {
        RearAxle = InventedCar.Axle(4.1) with { ParkingBrake = axle },
        Transmission = InventedCar.Plain.Transmission! with { ParkingBrake = box },
    };

    private static Driveline Linkage(Presence? linkage) => InventedCar.Plain with { Transmission = InventedCar.Plain.Transmission! with { ShiftLinkage = linkage } };

    private static List<Finding> Look(ICheck check, Driveline car) => [.. check.Look(car, CheckCase.NoGoals)];
}
