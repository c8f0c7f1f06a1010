using System.Globalization;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Quantities;

public sealed class RoundedTests
{
    private static readonly Gen<double> HalfWidths = Gen.Double[-6.0, 4.0].Select(exponent => Math.Pow(10, exponent));

    // Half-widths are 95 %: u = half / 1.959964.
    [Theory]
    [InlineData(4.7400, 0.0306, "4.74 ± 0.04")]
    [InlineData(4.7400, 0.0120, "4.740 ± 0.012")]
    [InlineData(4.7400, 0.0121, "4.740 ± 0.013")]
    [InlineData(4.7400, 0.0999, "4.74 ± 0.10")]
    [InlineData(4.7400, 0.3, "4.7 ± 0.3")]
    [InlineData(2512.4, 84, "2510 ± 90")]
    [InlineData(2512.4, 150, "2510 ± 150")]
    [InlineData(2512.4, 840, "2500 ± 900")]
    [InlineData(-0.2, 30, "0 ± 30")]
    [InlineData(-0.2, 3, "0 ± 3")]
    public void An_uncertainty_is_rounded_up_and_the_value_to_the_same_place(double value, double half, string expected)
        => Assert.Equal(expected, Rounded.WithInterval(Of(value, half), Units.One));

    // 240 ± 24 ends at 264: "± 30" would say 270, and that it reaches it. 102.04 ends below 102.05: so does ± 2.0, rounded to the nearest, and not ± 2.1.
    [Theory]
    [InlineData(240, 24, 270, "240 ± 24")]
    [InlineData(240, 24, 265, "240 ± 24")]
    [InlineData(240, 24, 263, "240 ± 30")]
    [InlineData(240, 24, 300, "240 ± 30")]
    [InlineData(240, 31, 270.5, "240 ± 40")]
    [InlineData(100, 2.04, 102.05, "100.0 ± 2.0")]
    [InlineData(100, 2.04, 101, "100 ± 3")]
    public void A_judged_interval_is_never_shown_on_another_side_of_its_limit(double value, double half, double most, string expected)
        => Assert.Equal(expected, Rounded.WithInterval(Of(value, half), Units.One, Window.AtMost(most)));

    [Fact]
    public void What_is_printed_of_a_judged_value_is_judged_as_the_value_is()
        => Gen.Select(Gen.Double[1, 1000], Gen.Double[0.01, 0.3], Gen.Double[-1.5, 1.5]).Sample((value, share, where) =>
        {
            var (half, wanted) = (value * share, Window.AtMost(value + (where * value * share)));
            var printed = Rounded.WithInterval(Of(value, half), Units.One, wanted).Split(" ± ").Select(Parse).ToList();
            var (shown, truly) = (new Interval(printed[0] - printed[1], printed[0] + printed[1]), Of(value, half).Interval95);

            // Closer than a thousandth of the ± nobody can tell.
            if (Math.Abs(truly.High - wanted.High) < half * 2e-3 || Math.Abs(truly.Low - wanted.High) < half * 2e-3) return;
            Assert.Equal((wanted.Contains(truly), wanted.Misses(truly)), (wanted.Contains(shown), wanted.Misses(shown)));
        });

    [Theory]
    [InlineData(4.1, "4.1")]
    [InlineData(4.777777, "4.7778")]
    [InlineData(2500, "2500")]
    [InlineData(-0.00001, "0")]
    public void An_exact_number_shows_what_it_has_and_four_places_at_most(double value, string expected)
        => Assert.Equal(expected, Rounded.Exact(value));

    [Theory]
    [InlineData(4.1, "4.10")]
    [InlineData(1, "1.00")]
    [InlineData(4.777777, "4.778")]
    public void An_exact_ratio_is_shown_as_finely_as_ratios_are_quoted(double value, string expected)
        => Assert.Equal(expected, Rounded.WithInterval(value, Units.One));

    // 2.04 m with ± 12 mm, as inches: 80.31 ± 0.472.
    [Fact]
    public void A_unit_is_converted_before_it_is_rounded()
    {
        var circumference = Of(2.04, 0.012);

        Assert.Equal("2.040 ± 0.012 m", Rounded.WithInterval(circumference, Units.Metre));
        Assert.Equal("80.3 ± 0.5 in", Rounded.WithInterval(circumference, Units.Inch));
        Assert.Equal("2.040 m", Rounded.Value(circumference, Units.Metre));
    }

    [Fact]
    public void No_digit_is_shown_that_the_half_width_does_not_support()
        => Gen.Select(Gen.Double[-5000, 5000], HalfWidths).Sample((value, half) =>
        {
            var shown = Parse(Rounded.HalfWidth(half));
            var lastPlace = Math.Pow(10, -Rounded.Places(half));

            Assert.InRange(shown, half * (1 - 1e-8), half * 1.5 + 1e-9);
            Assert.InRange(shown / lastPlace, 1, 20.000001);
            Assert.InRange(Math.Abs(Parse(Rounded.Value(value, half)) - value), 0, (lastPlace / 2) + 1e-7);
        });

    // 1.93 ± 0.07 m is 1.86 to 2.00 m; 1.9340 ± 0.0644 is printed as 1.93 ± 0.07 too, 1.925 ± 0.07 (a hair above
    // 1.925 in binary) as well, and 2.0397 ± 0.0119 as 2.040 ± 0.012.
    [Theory]
    [InlineData(1.93, 0.07, "1.86 to 2.00 m")]
    [InlineData(1.9340, 0.0644, "1.86 to 2.00 m")]
    [InlineData(2.0397, 0.0119, "2.028 to 2.052 m")]
    [InlineData(2512.4, 84, "2420 to 2600 m")]
    [InlineData(1.925, 0.07, "1.86 to 2.00 m")]
    [InlineData(2.04, 0, "2.04 m")]
    public void The_ends_are_those_of_what_is_printed(double value, double half, string expected)
        => Assert.Equal(expected, Rounded.Ends(Of(value, half), Units.Metre));

    [Fact]
    public void The_printed_ends_hold_the_printed_interval()
        => Gen.Select(Gen.Double[-50, 50], HalfWidths).Sample((value, half) =>
        {
            var ends = Rounded.Ends(Of(value, half), Units.One).Split(" to ").Select(Parse).ToList();
            var printed = Rounded.WithInterval(Of(value, half), Units.One).Split(" ± ").Select(Parse).ToList();

            Assert.Equal(printed[0] - printed[1], ends[0], 1e-6);
            Assert.Equal(printed[0] + printed[1], ends[1], 1e-6);
        });

    // 100 km/h are 62.137 mph, 2.04 m 80.315 in, 0.85 m² 9.1493 sq ft; nobody typed more than two or three figures of them.
    [Theory]
    [InlineData(100 / 3.6, "km/h", "mph", "62.14 mph")]
    [InlineData(100 / 3.6, "km/h", "km/h", "100 km/h")]
    [InlineData(2.04, "m", "in", "80.31 in")]
    [InlineData(0.85, "m²", "sq ft", "9.149 sq ft")]
    [InlineData(-2.04, "m", "in", "-80.31 in")]
    [InlineData(12_345.6, "m", "mm", "12345600 mm")]
    [InlineData(0, "km/h", "mph", "0 mph")]
    [InlineData(25.4, "m", "ft", "83.33 ft")]
    public void What_is_exact_as_it_was_typed_has_four_figures_in_another_unit(double value, string worded, string shown, string expected)
        => Assert.Equal(expected, Rounded.Converted(value, Units.Spelt(worded)!, Units.Spelt(shown)!));

    // 2.04 m ± 12 mm, as above.
    [Fact]
    public void What_is_not_exact_keeps_its_interval_in_any_unit()
        => Assert.Equal("80.3 ± 0.5 in", Rounded.Converted(Of(2.04, 0.012), Units.Metre, Units.Inch));

    [Theory]
    [InlineData("3.5", "°", "3.5°")]
    [InlineData("2.04", "m", "2.04 m")]
    [InlineData("4.10", "", "4.10")]
    public void Only_a_degree_stands_close_to_its_number(string number, string unit, string expected)
        => Assert.Equal(expected, Rounded.WithUnit(number, Units.Spelt(unit)!));

    [Theory]
    [InlineData(2549, -2, "2500")]
    [InlineData(2551, -2, "2600")]
    [InlineData(-40, -2, "0")]
    [InlineData(2549.4, 0, "2549")]
    [InlineData(4.1, 2, "4.10")]
    [InlineData(-0.001, 2, "0.00")]
    public void Places_left_of_the_point_are_hundreds_and_what_rounds_to_nothing_has_no_sign(double value, int places, string expected)
        => Assert.Equal(expected, Rounded.Fixed(value, places));

    // Turns are counted past a hundred, ratios are not.
    [Theory]
    [InlineData(99.5, "99.50")]
    [InlineData(100, "100")]
    [InlineData(120.5, "120.5")]
    [InlineData(-4.1, "-4.10")]
    public void What_is_counted_is_not_shown_like_a_ratio(double value, string expected)
        => Assert.Equal(expected, Rounded.Value(value, Units.One));

    [Theory]
    [InlineData(2.851, 3.209, 2, "2.86 to 3.20")]
    [InlineData(2.85, 3.21, 2, "2.85 to 3.21")]
    [InlineData(2250, 2550, 0, "2250 to 2550")]
    [InlineData(double.NegativeInfinity, 3.209, 2, "3.20 or less")]
    [InlineData(2.851, double.PositiveInfinity, 2, "2.86 or more")]
    public void A_window_is_rounded_inwards(double low, double high, int places, string expected)
        => Assert.Equal(expected, Rounded.Within(low, high, places, Units.One));

    [Fact]
    public void A_window_carries_its_unit_once_behind_the_last_number()
    {
        Assert.Equal("2.929 to 3.236 m", Rounded.Within(2.9285, 3.2368, 3, Units.Metre));
        Assert.Equal("3.236 m or less", Rounded.Within(double.NegativeInfinity, 3.2368, 3, Units.Metre));
        Assert.Equal("2.929 m or more", Rounded.Within(2.9285, double.PositiveInfinity, 3, Units.Metre));
    }

    [Theory]
    [InlineData(2, "2")]
    [InlineData(1.99, "2.0")]
    [InlineData(0.2, "0.2")]
    [InlineData(0.1, "0.10")]
    [InlineData(0.11, "0.11")]
    [InlineData(1000, "1000")]
    [InlineData(0.03, "0.03")]
    public void A_half_width_that_starts_with_one_has_two_figures(double half, string shown) => Assert.Equal(shown, Rounded.HalfWidth(half));

    // One value alone is a window too.
    [Theory]
    [InlineData(0.6361, 0.6441, 2, "0.636 to 0.644")]
    [InlineData(0.64001, 0.64002, 2, "0.64001 to 0.64002")]
    [InlineData(0.63, 0.65, 2, "0.63 to 0.65")]
    [InlineData(0.64, 0.64, 2, "0.64")]
    public void The_ends_of_an_interval_are_seen_to_differ(double low, double high, int places, string expected)
        => Assert.Equal(expected, Rounded.Between(low, high, places, Units.One));

    [Fact]
    public void A_window_of_one_value_is_that_value() => Assert.Equal("3.10", Rounded.Within(3.1, 3.1, 2, Units.One));

    // 3.001 to 3.009 has no number of two places inside.
    [Theory]
    [InlineData(3.001, 3.009, "3.001 to 3.009")]
    [InlineData(3.0012, 3.0013, "3.0012 to 3.0013")]
    public void A_window_narrower_than_the_places_gets_more_of_them(double low, double high, string expected)
        => Assert.Equal(expected, Rounded.Within(low, high, 2, Units.One));

    [Fact]
    public void Every_printed_window_lies_inside_the_true_one()
        => Gen.Select(Gen.Double[1, 5], Gen.Double[0.0001, 1]).Sample((low, width) =>
        {
            var ends = Rounded.Within(low, low + width, 2, Units.One).Split(" to ").Select(Parse).ToList();

            Assert.True(ends[0] <= ends[^1]);
            Assert.InRange(ends[0], low - 1e-9, low + width);
            Assert.InRange(ends[^1], low, low + width + 1e-9);
        });

    private static double Parse(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static Measured Of(double value, double half) => Measured.From(value, new Input("input", half / 1.959963984540054, new Evidence("bench")));
}
