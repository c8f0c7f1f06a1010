using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// 205/65R15 is 205 mm wide as a label says it, to 2 %.
/// Source of the limit: the owner's limit; 4 % over the marked width, UN R30, 6.1.1.1, and 6.1.4 from memory.
/// </remarks>
public sealed class TyreWidthCheckTests
{
    [Theory]
    [InlineData("220 mm", Verdict.Fits)]
    [InlineData("205 mm", Verdict.Watch)]
    [InlineData("190 mm", Verdict.Clash)]
    public void A_tyre_is_no_wider_than_the_owner_allows(string most, Verdict verdict)
        => Assert.Equal(verdict, CheckCase.Find(new TyreWidthCheck(), InventedCar.OnLabelledTyres(), AtMost(most)).Verdict);

    // UN R30: 0.4 of the rim's excess over the measuring rim (6 in): on 7 in 205 + 0.4 · 25.4 = 215.16 mm.
    [Fact]
    public void A_wider_rim_spreads_the_tyre()
        => Assert.Equal(0.21516, CheckCase.Find(new TyreWidthCheck(), InventedCar.OnLabelledTyres(rim: 7), AtMost("230 mm")).Value!.Value, 1e-9);

    [Fact]
    public void Without_a_limit_nothing_and_without_a_size_open()
    {
        Assert.Empty(CheckCase.Look(new TyreWidthCheck(), InventedCar.OnLabelledTyres()));
        Assert.Equal(Verdict.Open, CheckCase.Find(new TyreWidthCheck(), InventedCar.Plain, AtMost("220 mm")).Verdict);
    }

    private static OwnersGoals AtMost(string most) => CheckCase.NoGoals with { TyreWidth = LengthLimit.ReadTyreWidth(most).OrRefuse() };
}
