using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// 1500 mm between the faces, ET 25: 1450 mm; 1440 wants ET 30, on 6 in (6 + 1) · 12.7 + 30 = 118.9 mm from the back, or faces of 1490.
/// Source of the limit: the owner's limit; geometry.
/// </remarks>
public sealed class TrackCheckTests
{
    [Theory]
    [InlineData("1450 mm", Verdict.Fits)]
    [InlineData("1440 mm", Verdict.Clash)]
    public void The_wheels_stand_no_further_apart_than_the_owner_allows(string most, Verdict verdict)
    {
        var finding = CheckCase.Find(new TrackCheck(), InventedCar.OnLabelledTyres(rim: 6), AtMost(most));

        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.Clash)
            Assert.Equal(["wheels with an offset of 31 mm or more, on this rim a backspace of 120 mm or more", "an axle of 1489 mm or less between its hub faces"], finding.Cures);
    }

    [Fact]
    public void Without_a_limit_nothing_and_without_measures_open()
    {
        Assert.Empty(CheckCase.Look(new TrackCheck(), InventedCar.OnLabelledTyres(rim: 6)));
        Assert.Equal(Verdict.Open, CheckCase.Find(new TrackCheck(), InventedCar.Plain, AtMost("1450 mm")).Verdict);
    }

    private static OwnersGoals AtMost(string most) => CheckCase.NoGoals with { Track = LengthLimit.ReadTrack(most).OrRefuse() };
}
