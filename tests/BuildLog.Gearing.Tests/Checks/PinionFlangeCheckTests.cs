using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: geometry: the same words fit, other words clash.</remarks>
public sealed class PinionFlangeCheckTests
{
    [Fact]
    public void The_axles_pinion_takes_the_shafts_flange()
    {
        var finding = CheckCase.Find(new PinionFlangeCheck(), Car("flange 4 × 80 mm", "flange 4 × 76 mm"));

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.Equal(["a propshaft whose axle end is flange 4 × 76 mm", "a pinion flange that is flange 4 × 80 mm"], finding.Cures);
        Assert.Equal(Verdict.Fits, CheckCase.Find(new PinionFlangeCheck(), Car("flange 4 × 80 mm", "Flange 4 x 80mm")).Verdict);
    }

    [Fact]
    public void A_shaft_that_leads_to_no_axle_is_not_judged()
        => Assert.Empty(CheckCase.Look(new PinionFlangeCheck(), Car("A", "B") with { RearAxle = null }));

    private static Driveline Car(string shaftEnd, string pinion) => InventedCar.Plain with
    {
        Propshaft = new("shaft", new ShaftPiece()) { RearEnd = shaftEnd },
        RearAxle = InventedCar.Axle(4.1) with { PinionFlange = pinion },
    };
}
