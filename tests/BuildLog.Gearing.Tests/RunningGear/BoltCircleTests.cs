using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.RunningGear;

public sealed class BoltCircleTests
{
    // Worked examples H1 and H2.
    [Theory]
    [InlineData(67.18, Chord.Adjacent, 114.293)]
    [InlineData(108.71, Chord.SkipOne, 114.304)]
    public void Five_studs(double chord, Chord between, double circle)
        => Assert.Equal(circle, BoltCircle.FromChord(chord / 1000, 5, between).Value * 1000, 1e-3);

    // Second route: put the studs on a circle and measure between them.
    [Fact]
    public void Studs_on_a_circle_are_so_far_apart()
        => Gen.Select(Gen.Double[0.09, 0.3], Gen.Int[4, 10], Gen.Enum<Chord>()).Sample((circle, studs, between) =>
        {
            if (between == Chord.Across && studs % 2 != 0) return;

            var angle = 2 * Math.PI / studs * (between switch { Chord.Adjacent => 1, Chord.SkipOne => 2, _ => studs / 2 });
            var chord = circle / 2 * Math.Sqrt(Math.Pow(1 - Math.Cos(angle), 2) + Math.Pow(Math.Sin(angle), 2));

            Assert.Equal(circle, BoltCircle.FromChord(chord, studs, between).Value, 1e-9);
        });

    // Adjacent on five studs: u is 1.7013 times that of the caliper.
    [Fact]
    public void The_callipers_error_grows_with_the_factor()
        => Assert.Equal(0.3 * 1.7013, BoltCircle.FromChord(InventedCar.Of(0.06718, 0.0003), 5, Chord.Adjacent).StandardUncertainty * 1000, 1e-4);

    [Theory]
    [InlineData(2, Chord.Adjacent)]
    [InlineData(11, Chord.Adjacent)]
    [InlineData(3, Chord.SkipOne)]
    [InlineData(5, Chord.Across)]
    public void A_chord_that_is_none_is_refused(int studs, Chord between)
        => Assert.Throws<RefusedException>(() => BoltCircle.FromChord(0.07, studs, between));

    [Fact]
    public void A_circle_no_road_wheel_has_is_refused_with_the_range()
        => Assert.Contains("50 to 400 mm", Assert.Throws<RefusedException>(() => BoltCircle.FromChord(0.01, 5, Chord.Adjacent)).Message, StringComparison.Ordinal);

    [Fact]
    public void The_smallest_and_the_largest_circle_are_wheels()
    {
        Assert.Equal(0.05, BoltCircle.FromChord(0.05, 4, Chord.Across).Value, 1e-12);
        Assert.Equal(0.4, BoltCircle.FromChord(0.4, 4, Chord.Across).Value, 1e-12);
        Assert.Throws<RefusedException>(() => BoltCircle.FromChord(0.0499, 4, Chord.Across));
        Assert.Throws<RefusedException>(() => BoltCircle.FromChord(0.4001, 4, Chord.Across));
    }

    // Three studs lie at the corners of an equal-sided triangle: circle over side is 2/√3.
    [Fact]
    public void Three_studs_and_ten_are_the_fewest_and_the_most()
    {
        Assert.Equal(2 / Math.Sqrt(3), BoltCircle.Factor(3, Chord.Adjacent), 1e-12);
        Assert.Equal(1, BoltCircle.Factor(10, Chord.Across), 1e-12);
        Assert.Equal(1 / Math.Sin(Math.PI / 4), BoltCircle.Factor(8, Chord.SkipOne), 1e-12);
    }

    // The nearer one stands first: 120.5 ± 0.8 mm lies nearer to 120.65.
    [Fact]
    public void Of_two_that_may_be_the_nearer_one_is_named_first()
        => Assert.Equal(["5×120.65 mm (4.75 in)", "5×120 mm"], BoltPatterns.Matching(5, InventedCar.Of(0.1205, 0.0004)).Select(pattern => pattern.Name));

    // An exact circle is held to a twentieth of a millimetre.
    [Fact]
    public void A_typed_circle_may_be_rounded_to_the_tenth()
    {
        Assert.Single(BoltPatterns.Matching(5, 0.11205));
        Assert.Empty(BoltPatterns.Matching(5, 0.1121));
    }

    // Twins of the trade: each exact circle is one pattern, never its neighbour.
    [Theory]
    [InlineData(4, 100, "4×100 mm")]
    [InlineData(4, 101.6, "4×101.6 mm (4 in)")]
    [InlineData(5, 112, "5×112 mm")]
    [InlineData(5, 114.3, "5×114.3 mm (4.5 in)")]
    [InlineData(5, 120, "5×120 mm")]
    [InlineData(5, 120.65, "5×120.65 mm (4.75 in)")]
    [InlineData(6, 135, "6×135 mm")]
    [InlineData(6, 139.7, "6×139.7 mm (5.5 in)")]
    public void Near_patterns_are_never_merged(int studs, double circle, string name)
        => Assert.Equal([name], BoltPatterns.Matching(studs, circle / 1000).Select(pattern => pattern.Name));

    [Fact]
    public void No_two_patterns_of_the_list_match_one_exact_circle()
        => Assert.All(BoltPatterns.Common, pattern => Assert.Single(BoltPatterns.Matching(pattern.Studs, pattern.PitchCircle)));

    // ± 0.8 mm at 95 % around 120.3: both stay.
    [Fact]
    public void What_a_measurement_cannot_part_stays_two()
        => Assert.Equal(["5×120 mm", "5×120.65 mm (4.75 in)"], BoltPatterns.Matching(5, InventedCar.Of(0.1203, 0.0004)).Select(pattern => pattern.Name));

    [Fact]
    public void A_circle_nobody_sells_matches_none() => Assert.Empty(BoltPatterns.Matching(5, 0.1175));
}
