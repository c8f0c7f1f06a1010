using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: geometry: the same drive fits, the other clashes.</remarks>
public sealed class SpeedometerDriveCheckTests
{
    [Theory]
    [InlineData(SpeedometerFeed.Cable, SpeedometerFeed.Cable, Verdict.Fits)]
    [InlineData(SpeedometerFeed.Pulses, SpeedometerFeed.Cable, Verdict.Clash)]
    [InlineData(SpeedometerFeed.None, SpeedometerFeed.Pulses, Verdict.Clash)]
    public void A_speedometer_needs_its_kind_of_drive(SpeedometerFeed box, SpeedometerFeed dial, Verdict verdict)
    {
        var finding = CheckCase.Find(new SpeedometerDriveCheck(), Car(box, new Speedometer("dial") { Takes = dial }));

        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal([Position.Transmission, Position.Speedometer], finding.Between);
    }

    [Fact]
    public void Gears_mean_a_cable_and_a_wheel_needs_no_gearbox()
    {
        Assert.Equal(Verdict.Clash, CheckCase.Find(new SpeedometerDriveCheck(), Car(SpeedometerFeed.Pulses, new("dial", null, SpeedometerDrive.Gears(8, 21)))).Verdict);
        Assert.Empty(CheckCase.Look(new SpeedometerDriveCheck(), Car(SpeedometerFeed.None, new("dial", null, SpeedometerDrive.Pulses(8, Pickup.Wheel)))));
        Assert.Empty(CheckCase.Look(new SpeedometerDriveCheck(), Car(null, new("dial", null, SpeedometerDrive.Gears(8, 21)))));
    }

    [Fact]
    public void A_missing_drive_is_cured_by_a_sender()
        => Assert.Equal(
            ["a drive for pulses at the gearbox's tail", "a sender at the propshaft or a wheel"],
            CheckCase.Find(new SpeedometerDriveCheck(), Car(SpeedometerFeed.None, new("dial") { Takes = SpeedometerFeed.Pulses })).Cures);

    [Fact]
    public void Of_two_units_the_transfer_case_drives_it_once_somebody_looked_there()
    {
        var car = Car(SpeedometerFeed.Cable, new("dial") { Takes = SpeedometerFeed.Cable }) with { TransferCase = new("case", null, null) };

        var looked = CheckCase.Find(new SpeedometerDriveCheck(), car with { TransferCase = car.TransferCase with { SpeedometerFeed = SpeedometerFeed.Pulses } });

        Assert.Equal(Position.Transmission, CheckCase.Find(new SpeedometerDriveCheck(), car).Between[0]);
        Assert.Equal((Verdict.Clash, Position.TransferCase), (looked.Verdict, looked.Between[0]));
    }

    private static Driveline Car(SpeedometerFeed? box, Speedometer dial)
        => InventedCar.Plain with { Transmission = InventedCar.Plain.Transmission! with { SpeedometerFeed = box }, Speedometer = dial };
}
