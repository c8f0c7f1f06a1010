using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

public sealed class OverdriveUnitTests
{
    // Trade text: a 0.75 overdrive is called a 25 % overdrive. Half the last digit of a share is a hundredth of that of a number.
    [Theory]
    [InlineData("25 %", 0.75, 0.005)]
    [InlineData("25%", 0.75, 0.005)]
    [InlineData("22.2 %", 0.778, 0.0005)]
    [InlineData("22,2 %", 0.778, 0.0005)]
    [InlineData("0.75", 0.75, 0.005)]
    public void A_share_is_taken_off_one(string text, double ratio, double half)
    {
        var read = OverdriveUnit.Read(text).OrRefuse();

        Assert.Equal(ratio, read.Ratio, 1e-12);
        Assert.Equal(half, read.HalfLastDigit, 1e-12);
        Assert.Equal(text, read.Text);
    }

    [Theory]
    [InlineData("75 %")]
    [InlineData("-5 %")]
    [InlineData("1.28")]
    [InlineData("25 % ± 1 %")]
    [InlineData("%")]
    public void What_is_no_overdrive_is_refused(string text) => Assert.NotNull(OverdriveUnit.Read(text).Refusal);

    // 1/1.28 = 0.78.
    [Fact]
    public void One_written_the_other_way_round_is_asked_about()
    {
        var refusal = OverdriveUnit.Read("1.28").Refusal!;

        Assert.Contains("output over input?", refusal.Message, StringComparison.Ordinal);
        Assert.Equal("0.78", refusal.Example);
    }

    [Fact]
    public void A_share_without_its_sign_is_asked_for_the_sign()
    {
        var refusal = OverdriveUnit.Read("25").Refusal!;

        Assert.Contains("per cent", refusal.Message, StringComparison.Ordinal);
        Assert.Equal("25 %", refusal.Example);
        Assert.Equal("25 %", OverdriveUnit.Read("25 \n ").Refusal!.Example); // one line, however it was typed
    }

    // 1 / 1.28 = 0.78125: sold as 28 % faster, or as a drop of 22 %.
    [Fact]
    public void The_other_meaning_of_a_share_is_asked_about()
    {
        Assert.Equal(0.78125, OverdriveUnit.Ask(0.28).Otherwise!.Value, 1e-12);
        Assert.StartsWith("Is 28 % the gain in road speed", OverdriveUnit.Ask(0.28).InWords(), StringComparison.Ordinal);
    }

    // R 75, S 30: 75/105.
    [Fact]
    public void Teeth_say_it_exactly() => Assert.Equal(75 / 105.0, OverdriveUnit.Of(new Planetary(75, 30)), 1e-12);
}
