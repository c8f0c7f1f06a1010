using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <summary>What all joints of two ends in words have in common, seen at the bell housing.</summary>
/// <remarks>Source of the limit: geometry: the same words fit, other words clash.</remarks>
public sealed class MatingCheckTests
{
    [Theory]
    [InlineData("Corvane six", "CORVANE  SIX ")]
    [InlineData("6 × M10", "6 x m10")]
    [InlineData("6 * M10", "6X M10")]
    [InlineData("A‑4", "a-4")]
    public void The_same_words_fit_however_they_are_spelt(string engine, string box)
        => Assert.Equal(Verdict.Fits, CheckCase.Find(new BellHousingCheck(), Bell(engine, box)).Verdict);

    [Fact]
    public void One_end_known_asks_for_the_other_and_neither_known_says_nothing()
    {
        var finding = CheckCase.Find(new BellHousingCheck(), Bell("Corvane six", null));

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Equal("Whether the engine's bell-housing pattern and the gearbox's bell-housing pattern go together cannot be said: the gearbox's bell-housing pattern is not known.", finding.Says);
        Assert.Equal(["hold the bell housing against an engine that is known, or take the pattern on card"], finding.Cures);
        Assert.Empty(CheckCase.Look(new BellHousingCheck(), Bell(null, null)));
    }

    private static Driveline Bell(string? engine, string? box) => InventedJoint.Of(new() { BellHousing = engine }, new() { BellHousing = box });
}
