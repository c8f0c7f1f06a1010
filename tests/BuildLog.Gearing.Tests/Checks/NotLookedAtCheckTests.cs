using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: none: a matter of what was entered.</remarks>
public sealed class NotLookedAtCheckTests
{
    [Fact]
    public void What_nobody_looked_at_is_named_in_one_breath()
    {
        var finding = CheckCase.Find(new NotLookedAtCheck(), InventedCar.Plain with { Engine = new("engine") });

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Equal(
            "Nobody has looked at these yet: engine: redline, lowest clean pull, torque, bell-housing pattern, plate on the crankshaft, pilot bore, starter side, direction of rotation; "
                + "gearbox: bell-housing pattern, spigot, input spline, clutch-disc spline, starter opening, direction of rotation, shift linkage; "
                + "axle: parking brake, studs, bolt circle and spigot; tyres: wheels' holes, bolt circle and bore, rim width, marking; speedometer: turns it wants; "
                + "vehicle: mass, drag, rolling resistance, axle masses.",
            finding.Says);
        Assert.Contains("engine, pilot bore: measure the pilot bearing's bore with a caliper", finding.Cures);
        Assert.Contains("vehicle, axle masses: weigh the axles one by one", finding.Cures);
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
    public void Where_the_torque_is_known_a_part_without_a_rating_was_not_looked_at()
    {
        var told = InventedTruck.Whole with { Engine = InventedTruck.Whole.Engine! with { ToldTorque = new(300, null) } };
        var bare = told with
        {
            Transmission = told.Transmission! with { TorqueRating = null },
            TransferCase = told.TransferCase! with { TorqueRating = null },
            RearAxle = told.RearAxle! with { TorqueRating = null },
            FrontAxle = told.FrontAxle! with { TorqueRating = null },
        };
        var rated = bare with
        {
            Transmission = bare.Transmission with { TorqueRating = CheckCase.Known(500) },
            TransferCase = bare.TransferCase with { TorqueRating = CheckCase.Known(900) },
            RearAxle = bare.RearAxle with { TorqueRating = CheckCase.Known(5000) },
            FrontAxle = bare.FrontAxle with { TorqueRating = CheckCase.Known(5000) },
        };

        Assert.Equal(4, CheckCase.Find(new NotLookedAtCheck(), bare).Says.Split("torque rating").Length - 1);
        Assert.DoesNotContain("torque rating", CheckCase.Find(new NotLookedAtCheck(), rated).Says, StringComparison.Ordinal);
    }

    // A front axle that nothing drives carries no torque.
    [Fact]
    public void An_axle_that_is_not_driven_needs_no_rating()
    {
        var car = InventedCar.Plain with { Engine = new("four") { ToldTorque = new(200, null) }, FrontAxle = new("beam", null) };

        Assert.DoesNotContain("front axle: torque rating", CheckCase.Find(new NotLookedAtCheck(), car).Says, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bare_frame_asks_for_nothing() => Assert.Empty(CheckCase.Look(new NotLookedAtCheck(), new Driveline()));
}
