using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using UnitsNet;
using Xunit;

namespace BuildLog.Gearing.Tests.Quantities;

public sealed class UnitsTests
{
    // Second route: UnitsNet's own conversion of one such unit to the base unit.
    private static readonly Dictionary<string, double> ByUnitsNet = new()
    {
        [""] = 1,
        ["m"] = Length.FromMeters(1).Meters,
        ["mm"] = Length.FromMillimeters(1).Meters,
        ["cm"] = Length.FromCentimeters(1).Meters,
        ["in"] = Length.FromInches(1).Meters,
        ["ft"] = Length.FromFeet(1).Meters,
        ["mi"] = Length.FromMiles(1).Meters,
        ["km"] = Length.FromKilometers(1).Meters,
        ["km/h"] = Speed.FromKilometersPerHour(1).MetersPerSecond,
        ["mph"] = Speed.FromMilesPerHour(1).MetersPerSecond,
        ["m/s"] = 1,
        ["rev/min"] = RotationalSpeed.FromRevolutionsPerMinute(1).RevolutionsPerSecond,
        ["rev/s"] = 1,
        ["kg"] = 1,
        ["lb"] = Mass.FromPounds(1).Kilograms,
        ["t"] = Mass.FromTonnes(1).Kilograms,
        ["bar"] = Pressure.FromBars(1).Pascals,
        ["kPa"] = Pressure.FromKilopascals(1).Pascals,
        ["psi"] = Pressure.FromPoundsForcePerSquareInch(1).Pascals,
        ["°"] = Angle.FromDegrees(1).Radians,
        ["rad"] = 1,
        ["rad/s²"] = RotationalAcceleration.FromRadiansPerSecondSquared(1).RadiansPerSecondSquared,
        ["%"] = Ratio.FromPercent(1).DecimalFractions,
        ["N·m"] = 1,
        ["lb·ft"] = Torque.FromPoundForceFeet(1).NewtonMeters,
        ["kW"] = (double)Power.FromKilowatts(1).Watts,
        ["hp"] = 550 * Torque.FromPoundForceFeet(1).NewtonMeters, // UnitsNet rounds its own to 745.69 W.
        ["PS"] = (double)Power.FromMetricHorsepower(1).Watts,
        ["m²"] = 1,
        ["sq ft"] = Area.FromSquareFeet(1).SquareMeters,
        ["N"] = 1,
        ["kN"] = Force.FromKilonewtons(1).Newtons,
        ["lbf"] = Force.FromPoundsForce(1).Newtons,
    };

    [Fact]
    public void Every_factor_is_the_one_of_unitsnet()
        => Assert.All(Units.All, unit => Assert.Equal(ByUnitsNet[unit.Symbol], unit.Factor, 1e-9 * unit.Factor));

    [Fact]
    public void Every_spelling_finds_its_unit_and_no_other()
    {
        foreach (var unit in Units.All)
        {
            foreach (var spelling in unit.Spellings.Append(unit.Symbol))
            {
                Assert.Same(unit, Units.Spelt(spelling));
                Assert.Same(unit, Units.Spelt(spelling.ToUpperInvariant()));
            }
        }
    }

    [Fact]
    public void Every_spelling_can_be_typed_behind_a_number()
        => Assert.All(
            Units.All.Where(unit => unit != Units.One),
            unit => Assert.All(
                unit.Spellings.Append(unit.Symbol),
                spelling => Assert.Equal(unit.ToBase(24), QuantityText.Read($"24 {spelling}", unit.Kind).OrRefuse().Value, 1e-9 * unit.ToBase(24))));

    [Fact]
    public void An_unknown_spelling_finds_none() => Assert.Null(Units.Spelt("inn"));

    [Fact]
    public void Every_kind_has_a_word_and_an_example_that_is_read()
        => Assert.All(Enum.GetValues<Kind>(), kind =>
        {
            Assert.NotEmpty(kind.InWords());
            Assert.Null(QuantityText.Read(kind.Example(), kind).Refusal);
        });

    [Theory]
    [InlineData(Kind.Rotation, "an engine speed")]
    [InlineData(Kind.Area, "an area")]
    [InlineData(Kind.Angle, "an angle")]
    [InlineData(Kind.AngularAcceleration, "an angular acceleration")]
    [InlineData(Kind.Length, "a length")]
    public void A_kind_has_its_article(Kind kind, string words) => Assert.Equal(words, kind.WithArticle());

    // 2.04 m, 110 km/h and 2400 rev/min through the doors and back.
    [Fact]
    public void The_doors_to_unitsnet_keep_the_quantity()
    {
        Assert.Equal(2040, Measured.Exact(2.04).ToLength().Millimeters, 1e-9);
        Assert.Equal(110, Measured.Exact(110 / 3.6).ToSpeed().KilometersPerHour, 1e-9);
        Assert.Equal(2400, Measured.Exact(40).ToEngineSpeed().RevolutionsPerMinute, 1e-9);
        Assert.Equal(2.04, Length.FromMillimeters(2040).ToMeasured().Value, 1e-12);
        Assert.Equal(110 / 3.6, Speed.FromKilometersPerHour(110).ToMeasured().Value, 1e-12);
        Assert.Equal(40, RotationalSpeed.FromRevolutionsPerMinute(2400).ToMeasured().Value, 1e-12);
    }
}
