using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: every road law asks for one.</remarks>
public sealed class ParkingBrakeCheckTests
{
    [Theory]
    [InlineData(Presence.Fitted, null, Verdict.Fits)]
    [InlineData(Presence.Absent, Presence.Fitted, Verdict.Fits)]
    [InlineData(Presence.Absent, null, Verdict.Open)]
    [InlineData(Presence.Absent, Presence.Absent, Verdict.Clash)]
    public void One_anywhere_is_enough(Presence? axle, Presence? box, Verdict verdict)
        => Assert.Equal(verdict, CheckCase.Find(new ParkingBrakeCheck(), Car(axle, box)).Verdict);

    [Fact]
    public void What_nobody_looked_at_is_named_by_part()
    {
        Assert.Equal(["look at the gearbox for a lever, a cable or a drum"], CheckCase.Find(new ParkingBrakeCheck(), Car(Presence.Absent, null)).Cures);
        Assert.Empty(CheckCase.Look(new ParkingBrakeCheck(), Car(null, null)));
    }

    private static Driveline Car(Presence? axle, Presence? box) => InventedCar.Plain with
    {
        RearAxle = InventedCar.Axle(4.1) with { ParkingBrake = axle },
        Transmission = InventedCar.Plain.Transmission! with { ParkingBrake = box },
    };
}
