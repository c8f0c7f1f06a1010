using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.Measurements;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Propshafts;

public sealed class CriticalSpeedTests
{
    // Worked examples: 3.5 × 0.083 in, 45 in; 3.0 × 0.083 in, 60 in.
    [Theory]
    [InlineData(3.5, 0.083, 45, 11231.1)]
    [InlineData(3.0, 0.083, 60, 5393.67)]
    public void A_steel_tube(double outer, double wall, double length, double rpm)
        => Assert.Equal(rpm, 60 * CriticalSpeed.Of(new(outer * 0.0254, wall * 0.0254, length * 0.0254)).Value, 0.05);

    // Second route: the first bending frequency of a hinged beam, (π/2)√(E I / (ρ A))/L², with E 206.8 GPa (30e6 psi), ρ 7833 kg/m³ (0.283 lb/in³),
    // I = π(D⁴ − d⁴)/64, A = π(D² − d²)/4.
    [Fact]
    public void It_is_a_little_below_that_of_a_hinged_steel_beam()
        => Gen.Select(Gen.Double[0.03, 0.15], Gen.Double[0.02, 0.3], Gen.Double[0.4, 2.5]).Sample((outer, share, length) =>
        {
            var inner = outer * (1 - (2 * share));
            var i = Math.PI * (Math.Pow(outer, 4) - Math.Pow(inner, 4)) / 64;
            var a = Math.PI * ((outer * outer) - (inner * inner)) / 4;
            var beam = Math.PI / 2 * Math.Sqrt(30e6 * 6894.757 * i / (0.283 * 27679.9 * a)) / (length * length);

            Assert.InRange(CriticalSpeed.Of(new(outer, outer * share, length)).Value / beam, 0.98, 0.995);
        });

    [Fact]
    public void Twice_the_length_is_a_quarter_of_the_speed_and_twice_the_tube_is_twice_the_speed()
        => Gen.Select(Gen.Double[0.03, 0.1], Gen.Double[0.001, 0.005], Gen.Double[0.4, 1.5]).Sample((outer, wall, length) =>
        {
            var speed = CriticalSpeed.Of(new(outer, wall, length)).Value;

            Assert.Equal(speed / 4, CriticalSpeed.Of(new(outer, wall, 2 * length)).Value, 1e-9 * speed);
            Assert.Equal(speed * 2, CriticalSpeed.Of(new(2 * outer, 2 * wall, length)).Value, 1e-9 * speed);
        });

    // n ~ 1/L²: a length to 0.5 % is a speed to 1 %.
    [Fact]
    public void The_length_counts_twice_in_the_uncertainty()
        => Assert.Equal(0.01, CriticalSpeed.Of(new(0.0762, 0.0021, InventedCar.Of(1.5, 0.0075))).RelativeUncertainty, 1e-12);

    // Two shafts told alone share the doubt of the constant; their proportion has none of it.
    [Fact]
    public void The_constant_is_one_for_all_shafts()
    {
        Tube small = new(0.0762, 0.0021, 1.5), large = new(0.0889, 0.0021, 1.3);

        Assert.True((CriticalSpeed.Alone(small) / CriticalSpeed.Alone(large)).IsExact);
        SmallDifferences.Agree(x => CriticalSpeed.Of(new(x, 0.0021, 1.3)), 0.0762);
        SmallDifferences.Agree(x => CriticalSpeed.Of(new(0.0762, x, 1.3)), 0.0021);
    }

    // 2 %/√3 of the constant beside an exact tube.
    [Fact]
    public void Told_alone_it_is_no_better_than_its_constant()
        => Assert.Equal(0.02 / Math.Sqrt(3), CriticalSpeed.Alone(new(0.0762, 0.0021, 1.5)).RelativeUncertainty, 1e-12);

    [Fact]
    public void The_longest_and_the_thinnest_tube_for_a_speed_have_that_speed()
        => Gen.Select(Gen.Double[0.05, 0.1], Gen.Double[0.001, 0.003], Gen.Double[0.8, 1.5], Gen.Double[40, 200]).Sample((outer, wall, length, wanted) =>
        {
            Tube tube = new(outer, wall, length);
            var thinnest = CriticalSpeed.ThinnestFor(tube, wanted);

            Assert.Equal(wanted, CriticalSpeed.Of(new(outer, wall, CriticalSpeed.LongestFor(tube, wanted))).Value, 1e-9 * wanted);
            if (thinnest > 4 * wall) Assert.Equal(wanted, CriticalSpeed.Of(new(thinnest, wall, length)).Value, 1e-9 * wanted);
        });

    [Fact]
    public void Of_two_pieces_the_longer_one_whips_first()
    {
        Tube small = new(0.0762, 0.0021, 0.8), large = new(0.0762, 0.0021, 1.1);

        Assert.Same(large, CriticalSpeed.Weakest([small, large]));
    }

    // Nc/2 · 0.92 and 1.08: half-critical of 21762 rev/min is avoided from 10010 to 11751.
    [Fact]
    public void The_band_around_half_the_critical_speed()
    {
        Assert.Equal(10010, 21762 * WorkingShare.HalfCritical.Low, 0.6);
        Assert.Equal(11751, 21762 * WorkingShare.HalfCritical.High, 0.6);
    }

    // A solid bar 300 mm thick is no shaft anybody fits, but a tube it is; at 4 m a tube is still a shaft.
    [Fact]
    public void The_thickest_tube_the_thickest_wall_and_the_longest_shaft_can_be()
    {
        Assert.Equal(0, new Tube(0.3, 0.15, 4).Inner.Value, 1e-12);
        Assert.Throws<RefusedException>(() => new Tube(0.3001, 0.1, 4));
        Assert.Throws<RefusedException>(() => new Tube(0.3, 0.1501, 4));
        Assert.Throws<RefusedException>(() => new Tube(0.3, 0.15, 4.001));
    }

    // A speed that any tube of that wall has leaves the wall alone: no thickness solves it.
    [Fact]
    public void Where_any_tube_would_do_the_thinnest_is_its_own_wall()
        => Assert.Equal(0.01, CriticalSpeed.ThinnestFor(new(0.05, 0.01, 0.4), 1), 1e-12);

    [Theory]
    [InlineData(0, 0.002, 1)]
    [InlineData(0.4, 0.002, 1)]
    [InlineData(0.076, 0, 1)]
    [InlineData(0.076, 0.04, 1)]
    [InlineData(0.076, 0.002, 0)]
    [InlineData(0.076, 0.002, 5)]
    public void A_tube_that_cannot_be_is_refused_with_the_range(double outer, double wall, double length)
        => Assert.Matches("[0-9]", Assert.Throws<RefusedException>(() => new Tube(outer, wall, length)).Message);
}
