using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: geometry: there it fits, missing it clashes.</remarks>
public sealed class ShiftLinkageCheckTests
{
    [Fact]
    public void A_gearbox_has_its_linkage_or_nobody_can_change_gear()
    {
        Assert.Equal(Verdict.Fits, CheckCase.Find(new ShiftLinkageCheck(), Car(Presence.Fitted)).Verdict);
        Assert.Equal(Verdict.Clash, CheckCase.Find(new ShiftLinkageCheck(), Car(Presence.Absent)).Verdict);
        Assert.Empty(CheckCase.Look(new ShiftLinkageCheck(), Car(null)));
    }

    private static Driveline Car(Presence? linkage) => InventedCar.Plain with { Transmission = InventedCar.Plain.Transmission! with { ShiftLinkage = linkage } };
}
