using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class NotLookedAtCheckTests
{
    [Fact]
    public void What_nobody_looked_at_is_named_in_one_breath()
    {
        var finding = CheckCase.Find(new NotLookedAtCheck(), InventedCar.Plain with { Engine = new("engine") });

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
        var looked = InventedJoint.Of(new() { BellHousing = "six" }, new());

        Assert.DoesNotContain("bell-housing", CheckCase.Find(new NotLookedAtCheck(), looked).Says, StringComparison.Ordinal);
    }

    [Fact]
    public void A_four_wheel_drive_has_two_propshafts_and_is_asked_for_those_nobody_entered()
    {
        var truck = InventedTruck.Whole;

        Assert.Contains("front propshaft: tube, length and joints", CheckCase.Find(new NotLookedAtCheck(), truck with { FrontPropshaft = null }).Says, StringComparison.Ordinal);
        Assert.Contains(" propshaft: tube, length and joints", CheckCase.Find(new NotLookedAtCheck(), truck with { Propshaft = null }).Says, StringComparison.Ordinal);
        Assert.DoesNotContain("tube, length and joints", CheckCase.Find(new NotLookedAtCheck(), truck).Says, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bare_frame_asks_for_nothing() => Assert.Empty(CheckCase.Look(new NotLookedAtCheck(), new Driveline()));
}
