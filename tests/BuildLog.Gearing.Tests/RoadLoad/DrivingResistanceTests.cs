using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.RoadLoad;

public sealed class DrivingResistanceTests
{
    private const double HundredKmh = 100 / 3.6;

    // Worked by hand: 1800 kg, CdA 1.17 m², Crr 0.015, ρ 1.2, 100 km/h, with g = 9.81: 541.7 + 264.9 N, 24.893 kW at the flywheel with η 0.9.
    private static readonly DrivingResistance Worked = new(1800, 0.015, 1.17, 1.2);

    [Fact]
    public void Level_road_takes_roll_and_drag()
    {
        Assert.Equal(541.7, Worked.Drag(HundredKmh).Value, 0.05);
        Assert.Equal(541.7 + (264.9 * 9.80665 / 9.81), Worked.At(HundredKmh).Value, 0.1);
        Assert.Equal(24.893, Worked.At(HundredKmh).Value * HundredKmh / 0.9 / 1000, 0.004);
    }

    // The short form leaves cos θ out of the roll and takes 6 % for the sine: 57.534 kW; the exact one is 0.1 kW lower.
    [Fact]
    public void Six_per_cent_more_than_doubles_it()
        => Assert.Equal(57.534, Worked.At(HundredKmh, 0.06).Value * HundredKmh / 0.9 / 1000, 0.1);

    // Standing on 100 %: θ = 45°, m g (Crr + 1)/√2.
    [Fact]
    public void A_hundred_per_cent_is_forty_five_degrees()
        => Assert.Equal(1800 * 9.80665 * 1.015 / Math.Sqrt(2), Worked.At(0, 1).Value, 1e-9);

    [Fact]
    public void Faster_or_steeper_always_takes_more()
        => Gen.Select(Gen.Double[1, 60], Gen.Double[0, 0.5], Gen.Double[0.01, 5]).Sample((v, gradient, more) =>
        {
            Assert.True(Worked.At(v + more, gradient).Value > Worked.At(v, gradient).Value);
            Assert.True(Worked.At(v, gradient + (more / 10)).Value > Worked.At(v, gradient).Value);
        });

    // The mass is in roll and climb alike: 1 % of it is 1 % of both, and nothing of the drag.
    [Fact]
    public void The_mass_counts_once_however_often_it_stands_in_the_formula()
    {
        var force = (Worked with { Mass = InventedCar.Of(1800, 18) }).At(HundredKmh, 0.06);

        Assert.Equal(0.01 * (force.Value - Worked.Drag(HundredKmh).Value), force.StandardUncertainty, 1e-9);
    }

    // By the antiderivative, ∫ m/(a + c v²) dv = m/√(a c) · atan(v √(c/a)).
    [Fact]
    public void Coasting_down_takes_what_the_closed_form_says()
    {
        var (a, c) = (Worked.Curve.F0, Worked.Curve.F2);
        double Antiderivative(double v) => 1850 / Math.Sqrt(a * c) * Math.Atan(v * Math.Sqrt(c / a));

        Assert.Equal(Antiderivative(25) - Antiderivative(10), Worked.Curve.CoastDown(1850, 25, 10), 1e-9);
    }

    [Fact]
    public void What_does_not_slow_down_is_no_coast_down()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Worked.Curve.CoastDown(1850, 10, 25));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RoadLoadCurve(-100, 0, 0).CoastDown(1850, 25, 10));
    }

    [Fact]
    public void Without_mass_roll_or_drag_nothing_can_be_said()
    {
        Assert.Null(DrivingResistance.Of(null));
        Assert.Null(DrivingResistance.Of(InventedLoad.Exact with { Mass = null }));
        Assert.Null(DrivingResistance.Of(InventedLoad.Exact with { DragArea = null }));
        Assert.Null(DrivingResistance.Of(InventedLoad.Exact with { RollingResistance = null }));
        Assert.Equal(1.225, DrivingResistance.Of(InventedLoad.Exact)!.AirDensity.Value, 1e-5);
    }

    // ρ at 2000 m is 1.0066 (ISO 2533).
    [Fact]
    public void High_up_there_is_less_drag()
        => Assert.Equal(1.0066, DrivingResistance.Of(InventedLoad.Exact with { Altitude = 2000 })!.AirDensity.Value, 5e-5);

    [Theory]
    [InlineData("1450 kg", 1450)]
    [InlineData("3200 lb", 1451.496)]
    public void A_mass_is_read(string text, double kilograms) => Assert.Equal(kilograms, VehicleLoad.ReadMass(text).OrRefuse().Value, 0.001);

    [Fact]
    public void Loads_that_cannot_be_are_refused_with_the_range()
    {
        Assert.Contains("100 kg to 60 t", VehicleLoad.ReadMass("14 kg").Refusal!.Message, StringComparison.Ordinal);
        Assert.Contains("0.2 to 12", VehicleLoad.ReadDragArea("85").Refusal!.Message, StringComparison.Ordinal);
        Assert.Contains("0.003", VehicleLoad.ReadRollingResistance("14").Refusal!.Message, StringComparison.Ordinal);
        Assert.Contains("5 to 100 %", VehicleLoad.ReadDrivenShare("120 %").Refusal!.Message, StringComparison.Ordinal);
        Assert.Contains("6000 m", VehicleLoad.ReadAltitude("9 km").Refusal!.Message, StringComparison.Ordinal);
        Assert.Equal(0.52, VehicleLoad.ReadDrivenShare("52").OrRefuse().Value, 1e-12);
    }

    [Fact]
    public void The_ends_of_what_is_typed_of_a_vehicle_belong_to_their_ranges()
    {
        Ends(VehicleLoad.ReadMass, "100 kg", "60 t", "99 kg", "60.1 t");
        Ends(VehicleLoad.ReadDragArea, "0.2", "12 m²", "0.19", "12.1");
        Ends(VehicleLoad.ReadRollingResistance, "0.003", "0.4", "0.0029", "0.41");
        Ends(VehicleLoad.ReadDrivenShare, "5", "100 %", "4.9 %", "100.1");
        Ends(VehicleLoad.ReadAltitude, "-500", "6 km", "-501", "6001 m");
        Assert.Equal("0.85 m²", VehicleLoad.ReadDragArea("much").Refusal!.Example);
    }

    // ½ · 1.225 · 1 m² · (10 m/s)² = 61.25 N, and 0.015 of 1000 kg are 147.1 N; times 10 m/s the power.
    [Fact]
    public void The_curve_is_the_road_without_its_uncertainty()
    {
        var curve = new DrivingResistance(1000, 0.015, 1, 1.225).Curve;

        Assert.Equal((0, 0.6125), (curve.F1, Math.Round(curve.F2, 12)));
        Assert.Equal(147.09975 + 61.25, curve.Force(10), 1e-9);
        Assert.Equal(2083.4975, curve.Power(10), 1e-9);
        Assert.Equal(1 + 20 + 300, new RoadLoadCurve(1, 2, 3).Force(10), 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => curve.CoastDown(1000, 10, 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RoadLoadCurve(0, 1, 0).CoastDown(1000, 10, 0));
    }

    // Second route for the product's uncertainty: relative parts in squares.
    [Fact]
    public void A_body_class_is_an_assumption_as_wide_as_its_band()
    {
        Assert.All(BodyClass.All, body =>
        {
            var area = body.DragArea();
            double cd = (body.CoefficientLow + body.CoefficientHigh) / 2, a = (body.AreaLow + body.AreaHigh) / 2;
            var relative = Math.Sqrt((Math.Pow((body.CoefficientHigh - body.CoefficientLow) / cd, 2) + Math.Pow((body.AreaHigh - body.AreaLow) / a, 2)) / 12);

            Assert.Equal(Gearing.Measurements.Source.Assumed, area.Source);
            Assert.Equal(relative, area.Value.RelativeUncertainty, 1e-12);
            Assert.Null(VehicleLoad.ReadDragArea($"{Rounded.Exact(area.Value.Value)} m²").Refusal);
        });
        Assert.Equal(BodyClass.All.Count, BodyClass.All.Select(body => body.Name).Distinct().Count());
    }

    // Walter and Conant (1974): tyres in normal operation roll at 10 to 20 lb for 1000 lb.
    [Fact]
    public void Road_tyres_roll_as_published_and_soft_ground_harder()
    {
        Assert.All(RollingClass.All.Take(3), tyre => Assert.InRange(tyre.Coefficient().Value.Value, 0.010, 0.020));
        Assert.Equal(RollingClass.All.OrderBy(rolling => rolling.Low), RollingClass.All);
        Assert.All(RollingClass.All, rolling => Assert.Equal((rolling.Low + rolling.High) / 2, rolling.Coefficient().Value.Value, 1e-12));
        Assert.All(RollingClass.All, rolling => Assert.Equal((rolling.High - rolling.Low) / Math.Sqrt(12), rolling.Coefficient().Value.StandardUncertainty, 1e-12));
        Assert.All(RollingClass.All, rolling => Assert.Null(VehicleLoad.ReadRollingResistance(Rounded.Exact(rolling.Coefficient().Value.Value)).Refusal));
    }

    private static void Ends(Func<string, Parsed<Typed>> read, string low, string high, string tooLow, string tooHigh)
    {
        Assert.All([low, high], text => Assert.Null(read(text).Refusal));
        Assert.All([tooLow, tooHigh], text => Assert.Equal("out-of-range", read(text).Refusal!.Code));
    }
}
