using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

public sealed class SuspectReadingTests
{
    [Theory]
    [InlineData(2, 1, "half a propshaft turn too many", "10:20.5", "10:20.5", "10:21")]
    [InlineData(1, -1, "half a propshaft turn short", "10:20.5", "10:20", "10:20.5")]
    [InlineData(0, 2, "one propshaft turn too many", "10:21.5", "10:20.5", "10:20.5")]
    [InlineData(2, -3, "one and a half propshaft turns short", "10:20.5", "10:20.5", "10:19")]
    [InlineData(2, 4, "2 propshaft turns too many", "10:20.5", "10:20.5", "10:22.5")]
    [InlineData(3, 2, "one propshaft turn too many", "10:20.5", "20:41", "15:30.75", "20:42")]
    public void A_slip_is_named_by_its_half_turns(int index, int halves, string says, params string[] turns)
    {
        var suspect = Assert.Single(Of(0.25, turns).Suspects);

        Assert.Equal((index, halves, says), (suspect.Index, suspect.HalfTurns, suspect.Says));
    }

    // Read to a tenth: 0.3 off is more than reading allows, and no half turn.
    [Fact]
    public void What_no_half_turn_explains_is_named_with_its_size()
    {
        var suspect = Assert.Single(Of(0.1, "10:20.5", "10:20.5", "10:20.8").Suspects);

        Assert.Equal(0, suspect.HalfTurns);
        Assert.Contains("0.3 propshaft turns", suspect.Says, StringComparison.Ordinal);
        Assert.Contains("10:20.8", suspect.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Which_of_two_is_wrong_cannot_be_said_so_both_are_named()
    {
        var count = Of(0.25, "10:20.5", "10:21");

        Assert.Equal([0, 1], count.Suspects.Select(suspect => suspect.Index));
        Assert.Equal(["half a propshaft turn short", "half a propshaft turn too many"], count.Suspects.Select(suspect => suspect.Says));
        Assert.True(count.NeedsThirdCount);
    }

    // A shaft that stands near the middle of two marks is read to either: one step is no slip.
    [Theory]
    [InlineData("10:20.5", "10:20.25")]
    [InlineData("10:20.5", "10:20.5", "10:20.25")]
    [InlineData("10:20.5", "10:20.25", "10:20.5", "10:20.25")]
    public void One_step_of_reading_is_no_slip(params string[] turns)
    {
        var count = Of(0.25, turns);

        Assert.Empty(count.Suspects);
        Assert.False(count.NeedsThirdCount);
    }

    [Theory]
    [InlineData("10:20.5")]
    [InlineData("10:20.5", "10:20.5")]
    [InlineData("10:20.5", "20:41", "30:61.5")]
    public void Counts_that_agree_name_nobody(params string[] turns) => Assert.Empty(Of(0.25, turns).Suspects);

    // One turn too many and one too few, beside two good counts: neither stands out from the others, but t is large and the interval wide.
    [Fact]
    public void Slips_that_hide_each_other_still_widen_the_interval()
    {
        var count = Of(0.25, "10:20.5", "10:21.5", "10:20.5", "10:19.5");

        Assert.Empty(count.Suspects);
        Assert.True(count.Ratio.Expanded95 > 0.2);
    }

    [Fact]
    public void A_suspect_stays_in_the_fit_until_it_is_dropped()
    {
        Assert.Equal(2 * (20.5 + 20.5 + 21.5) / 30, Of(0.25, "10:20.5", "10:20.5", "10:21.5").Ratio.Value, 1e-9);
        Assert.Equal(4.1, Of(0.25, "10:20.5", "10:20.5").Ratio.Value, 1e-12);
    }

    [Fact]
    public void Exact_readings_that_differ_are_suspect_too()
    {
        static TurnCount Exactly(params string[] turns)
            => TurnCount.Of([.. turns.Select(text => TurnReading.Read(text, Wheels.OneHeld).OrRefuse())], new CountPrecision(0, 0));

        Assert.Empty(Exactly("10:20.5", "20:41", "10:20.5").Suspects);
        Assert.Equal(1, Assert.Single(Exactly("10:20.5", "20:41.5", "10:20.5").Suspects).Index);
    }

    private static TurnCount Of(double readTo, params string[] turns)
        => TurnCount.Of([.. turns.Select(text => TurnReading.Read(text, Wheels.OneHeld).OrRefuse())], new CountPrecision(readTo, 0.02));
}
