using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

public sealed class TurnReadingTests
{
    [Theory]
    [InlineData("10:20.5", Wheels.OneHeld, 10, 0, 20.5)]
    [InlineData("10:20 1/2", Wheels.OneHeld, 10, 0, 20.5)]
    [InlineData(" 10 : 20½ ", Wheels.OneHeld, 10, 0, 20.5)]
    [InlineData("10:41", Wheels.Together, 10, 10, 41)]
    [InlineData("10:20,5", Wheels.OneHeld, 10, 0, 20.5)]
    [InlineData("10,10:41,25", Wheels.Each, 10, 10, 41.25)]
    [InlineData("10,10:41", Wheels.Each, 10, 10, 41)]
    [InlineData("12,-2:20.5", Wheels.Each, 12, -2, 20.5)]
    [InlineData("0.5:1", Wheels.OneHeld, 0.5, 0, 1)]
    public void A_count_is_wheel_turns_a_colon_propshaft_turns(string text, Wheels wheels, double left, double right, double propshaft)
    {
        var reading = TurnReading.Read(text, wheels).OrRefuse();

        Assert.Equal((left, right, propshaft), (reading.Left, reading.Right, reading.Propshaft));
        Assert.Equal(text.Trim(), reading.Text);
    }

    [Theory]
    [InlineData("10", Wheels.OneHeld, "turns", "colon")]
    [InlineData("10:20:30", Wheels.OneHeld, "turns", "colon")]
    [InlineData("10:", Wheels.OneHeld, "turns", "missing")]
    [InlineData(":20", Wheels.OneHeld, "turns", "missing")]
    [InlineData("0:20.5", Wheels.OneHeld, "turns", "more than zero")]
    [InlineData("-10:20.5", Wheels.Together, "turns", "more than zero")]
    [InlineData("10:0", Wheels.OneHeld, "turns", "more than zero")]
    [InlineData("10:-20.5", Wheels.OneHeld, "turns", "more than zero")]
    [InlineData("0.4:1", Wheels.OneHeld, "turns", "half a wheel turn")]
    [InlineData("10:20000", Wheels.OneHeld, "turns", "10 000")]
    [InlineData("10,10:41", Wheels.OneHeld, "turns", "both wheels")]
    [InlineData("10:41", Wheels.Each, "turns", "left,right")]
    [InlineData("10,5:20", Wheels.OneHeld, "turns", "point")]
    [InlineData("10:20,500", Wheels.OneHeld, "turns", "20500 or 20.500")]
    [InlineData("10:20.5 ± 0.1", Wheels.OneHeld, "turns", "uncertainty")]
    [InlineData("10,-10:0.5", Wheels.Each, "wheels-cancel", "cancel")]
    [InlineData("10,-9.6:0.5", Wheels.Each, "wheels-cancel", "cancel")]
    [InlineData("-10,-10:41", Wheels.Each, "turns", "backwards")]
    public void What_is_no_count_is_refused_with_the_reason(string text, Wheels wheels, string code, string reason)
    {
        var refusal = TurnReading.Read(text, wheels).Refusal!;

        Assert.Equal(code, refusal.Code);
        Assert.Contains(reason, refusal.Message, StringComparison.Ordinal);
        Assert.Null(TurnReading.Read(refusal.Example, wheels).Refusal);
    }

    [Fact]
    public void Turns_of_the_left_wheel_count_like_those_of_the_right()
        => Gen.Select(Gen.Int[1, 40], Gen.Int[-10, 40], Gen.Int[10, 400]).Where((left, right, _) => left + right >= 1).Sample((left, right, quarters) =>
        {
            Parsed<TurnReading> Read(int a, int b) => TurnReading.Read(FormattableString.Invariant($"{a},{b}:{quarters / 4.0}"), Wheels.Each);
            var (one, other) = (Read(left, right).OrRefuse(), Read(right, left).OrRefuse());

            // Any ratio will do here, so the range is the widest.
            var range = new RatioRange("test", 1e-6, 1e6, "1");
            var (a, b) = (TurnCount.Of([one], new CountPrecision(), range).Ratio, TurnCount.Of([other], new CountPrecision(), range).Ratio);
            Assert.Equal(a.Value, b.Value);
            Assert.Equal(a.StandardUncertainty, b.StandardUncertainty);
        });

    [Fact]
    public void A_wheel_read_as_standing_still_is_a_wheel_held()
        => Assert.Equal(Wheels.OneHeld, TurnReading.Read("10,0:20.5", Wheels.Each).OrRefuse().Turned);

    [Theory]
    [InlineData("10,5:30", 10.5, 30)]
    [InlineData("10:30,1", 10, 30.1)]
    public void A_gear_has_one_output_so_a_comma_is_a_decimal_mark_on_both_sides(string text, double output, double input)
    {
        var read = TurnReading.ReadGear(text).OrRefuse();

        Assert.Equal((output, output, input), (read.Left, read.Right, read.Propshaft));
    }

    [Theory]
    [InlineData("0.2:1", "half an output turn")]
    public void Less_than_half_a_turn_of_the_output_is_refused(string text, string says)
        => Assert.Contains(says, TurnReading.ReadGear(text).Refusal!.Message, StringComparison.Ordinal);

    // Ten thousand is the most, of either wheel as of the shaft.
    [Theory]
    [InlineData("4800:10000", Wheels.OneHeld, true)]
    [InlineData("20000:41", Wheels.OneHeld, false)]
    [InlineData("20000,-19990:41", Wheels.Each, false)]
    [InlineData("-19990,20000:41", Wheels.Each, false)]
    public void Nobody_counts_more_than_ten_thousand_turns_of_anything(string text, Wheels wheels, bool counted)
        => Assert.Equal(counted, TurnReading.Read(text, wheels).Refusal is null);

    [Theory]
    [InlineData("axle", "half an axle turn")]
    [InlineData("engine", "half an engine turn")]
    [InlineData("input", "half an input turn")]
    [InlineData("output", "half an output turn")]
    [InlineData("wheel", "half a wheel turn")]
    public void Half_a_turn_has_its_article(string end, string says) => Assert.Equal(says, CountedEnds.Half(end));
}
