using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Tyres;

public sealed class RollOutTests
{
    // By hand: C = 6.126/3 = 2.042 m; along the floor the tape gives 2 mm/√3 and the mark 0.01 · 2.042 m/√3 = 11.79 mm:
    // u(C) = √(1.1547² + 11.7895²) mm / 3 = 3.9486 mm.
    [Fact]
    public void Tape_and_mark_are_shared_over_the_turns()
    {
        var measured = Of(new(Loaded: true), "3:6126mm").Measured;

        Assert.Equal(2.042, measured.Value, 1e-12);
        Assert.Equal(0.0039486, measured.StandardUncertainty, 1e-6);
    }

    // The driveline note's example: ten turns, 20.36 m → 2.036 m.
    [Fact]
    public void Ten_turns_and_20_36_m_are_2_036_m_a_turn() => Assert.Equal(2.036, Of(new(Loaded: true), "10:20.36 m").RollingCircumference.Value, 1e-12);

    // Line through the origin, all marks of one weight: C = Σ x y / Σ x² = (1 · 2.04 + 2 · 4.10 + 3 · 6.12) / 14 = 28.60/14.
    [Fact]
    public void Marks_of_one_run_are_a_line_through_the_origin()
        => Assert.Equal(28.60 / 14, Of(new(Loaded: true), "1:2.04m", "2:4.10m", "3:6.12m").Measured.Value, 1e-9);

    [Fact]
    public void Rolled_loaded_it_is_the_rolling_circumference_and_says_nothing_of_the_free_diameter()
    {
        var roll = Of(new(Loaded: true), "3:6126mm");

        Assert.Same(roll.Measured, roll.RollingCircumference);
        Assert.Null(roll.FreeDiameter);
    }

    // By hand: 2.042 · 0.971 = 1.98278 m; u² = (0.971 · 3.9486)² + (2042 · 0.010)² mm² = 20.777².
    [Fact]
    public void Rolled_loose_a_radial_covers_0_971_of_it_once_loaded()
    {
        var roll = Of(new(Loaded: false), "3:6126mm");

        Assert.Equal(1.982782, roll.RollingCircumference.Value, 1e-9);
        Assert.Equal(0.0207767, roll.RollingCircumference.StandardUncertainty, 1e-6);
        Assert.Equal(2.042 / Math.PI, roll.FreeDiameter!.Value, 1e-12);
    }

    // Bias 0.952 with u 0.015, from memory.
    [Fact]
    public void Rolled_loose_a_bias_tyre_covers_0_952_of_it_once_loaded()
    {
        var rolling = Of(new(Loaded: false, Construction.Bias), "3:6126mm").RollingCircumference;

        Assert.Equal(2.042 * 0.952, rolling.Value, 1e-9);
        Assert.Contains(rolling.Budget(), line => line.Input.StandardUncertainty == 0.015);
    }

    // Two loose radials: the loaded factor is one error for both, so it is not in their quotient.
    [Fact]
    public void Comparing_two_loose_tyres_of_a_kind_has_no_loaded_factor_in_it()
    {
        var (front, rear) = (Of(new(Loaded: false), "3:6126mm"), Of(new(Loaded: false), "3:6100mm"));
        var quotient = front.RollingCircumference / rear.RollingCircumference;

        Assert.Equal((front.Measured / rear.Measured).StandardUncertainty, quotient.StandardUncertainty, 1e-12);
        Assert.DoesNotContain(quotient.Budget(), line => line.Input.Name.Text.StartsWith("loaded factor", StringComparison.Ordinal));
        Assert.Equal(0, Measured.Covariance(front.RollingCircumference, Of(new(Loaded: false, Construction.Bias), "3:6126mm").RollingCircumference));
    }

    [Theory]
    [InlineData(-0.001, 0.01)]
    [InlineData(0.101, 0.01)]
    [InlineData(double.NaN, 0.01)]
    [InlineData(0.002, -0.01)]
    [InlineData(0.002, 0.51)]
    public void A_tape_or_a_mark_that_nobody_has_is_refused(double tape, double align)
        => Assert.Throws<RefusedException>(() => Of(new(Loaded: true, Tape: tape, Align: align), "3:6126mm"));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.1, 0.5)]
    public void The_ends_of_what_a_tape_and_a_mark_may_be_belong_to_it(double tape, double align)
        => Assert.Equal(2.042, Of(new(Loaded: true, Tape: tape, Align: align), "3:6126mm").Measured.Value, 1e-9);

    // A thousand turns, 0.8 and 6 m a turn are the last that are read.
    [Theory]
    [InlineData("1000:2040 m")]
    [InlineData("1:0.8 m")]
    [InlineData("1:6 m")]
    public void The_ends_of_what_a_tyre_may_cover_belong_to_it(string text) => Assert.Null(RollReading.Read(text).Refusal);

    [Theory]
    [InlineData("1:0.799 m")]
    [InlineData("1:6.001 m")]
    [InlineData("1000.5:2040 m")]
    [InlineData("1:2:3 m")]
    public void Beyond_them_is_a_slip_of_the_pen(string text) => Assert.Equal("roll", RollReading.Read(text).Refusal!.Code);

    [Fact]
    public void Without_a_roll_there_is_no_circumference() => Assert.Throws<RefusedException>(() => Of(new(Loaded: true)));

    // By hand: one roll over three turns is twice as good over six; where marks scatter, twice the longest.
    [Theory]
    [InlineData(2, "roll over 6 turns", "3:6126mm")]
    [InlineData(2, "roll over 6 turns", "1:2040mm", "2:4200mm", "3:6000mm")]
    public void The_advice_is_one_roll_that_is_better_than_the_line_by_the_factor(double factor, string says, params string[] rolls)
        => Assert.StartsWith(says, Of(new(Loaded: true), rolls).Measured.Budget()[0].Input.Evidence.Settle!(factor), StringComparison.Ordinal);

    [Theory]
    [InlineData("1:2040mm", 1.0, 2.04)]
    [InlineData("3 : 6.125 m", 3.0, 6.125)]
    [InlineData("3:6,125 m", null, null)]
    [InlineData("2.5:5,10 m", 2.5, 5.1)]
    [InlineData("3:20' 1\"", 3.0, 6.1214)]
    [InlineData("3", null, null)]
    [InlineData("3:6125", null, null)]
    [InlineData("0:2040mm", null, null)]
    [InlineData("-1:2040mm", null, null)]
    [InlineData("1:-2040mm", null, null)]
    [InlineData("1:204mm", null, null)]
    [InlineData("1:20400mm", null, null)]
    [InlineData("1001:2040m", null, null)]
    [InlineData("3:6125mm ± 2mm", null, null)]
    public void A_roll_is_turns_a_colon_a_distance_with_its_unit(string text, double? turns, double? metres)
    {
        var read = RollReading.Read(text);
        if (turns is null)
        {
            Assert.Equal("roll", read.Refusal?.Code);
            Assert.Null(RollReading.Read(read.Refusal!.Example).Refusal);
            return;
        }

        Assert.Equal(turns.Value, read.OrRefuse().Turns, 1e-12);
        Assert.Equal(metres!.Value, read.OrRefuse().Distance, 1e-12);
    }

    private static RollOut Of(RollOutPrecision how, params string[] rolls) => RollOut.Of([.. rolls.Select(text => RollReading.Read(text).OrRefuse())], how);
}
