using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: geometry: the same words fit, other words clash.</remarks>
public sealed class BellHousingCheckTests
{
    private static readonly Driveline Other = InventedJoint.Of(new() { BellHousing = "Corvane six" }, new() { BellHousing = "Delmere light" });

    [Fact]
    public void Another_pattern_clashes_and_an_adapter_cures_it()
    {
        var finding = CheckCase.Find(new BellHousingCheck(), Other);

        Assert.Equal((Verdict.Clash, Because.Outside), (finding.Verdict, finding.Because));
        Assert.Equal("The engine's bell-housing pattern is Corvane six, the gearbox's bell-housing pattern is Delmere light.", finding.Says);
        Assert.Equal(["an adapter plate from Corvane six to Delmere light", "a bell housing of the pattern Corvane six"], finding.Cures);
        Assert.Equal([Position.Engine, Position.Transmission], finding.Between);
    }

    [Fact]
    public void A_gearbox_without_an_engine_has_no_joint_to_judge() => Assert.Empty(CheckCase.Look(new BellHousingCheck(), Other with { Engine = null }));
}
