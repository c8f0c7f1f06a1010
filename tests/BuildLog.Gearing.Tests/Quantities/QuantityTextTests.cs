using System.Globalization;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Gearing.Tests.Quantities;

public sealed class QuantityTextTests
{
    /// <summary>What people write, and what it is in the base unit (metres, m/s, rev/s, kg, Pa, one), by hand.</summary>
    public static TheoryData<string, Kind, double> Styles => new()
    {
        { "27 in", Kind.Length, 0.6858 },
        { "27\"", Kind.Length, 0.6858 },
        { "27in", Kind.Length, 0.6858 },
        { "35 inches", Kind.Length, 0.889 },
        { "7 1/4 in", Kind.Length, 0.18415 },
        { "½ in", Kind.Length, 0.0127 },
        { "1/2 in", Kind.Length, 0.0127 },
        { "2½\"", Kind.Length, 0.0635 },
        { "6'", Kind.Length, 1.8288 },
        { "6' 2\"", Kind.Length, 1.8796 },
        { "6' 2 1/2\"", Kind.Length, 1.8923 },
        { "6′ 2½″", Kind.Length, 1.8923 },
        { "6 ft 2 in", Kind.Length, 1.8796 },
        { "6''", Kind.Length, 0.1524 },
        { "2040mm", Kind.Length, 2.04 },
        { "2040 MM", Kind.Length, 2.04 },
        { "2 040 mm", Kind.Length, 2.04 },
        { "2\u202f040 mm", Kind.Length, 2.04 },
        { "2.04 m", Kind.Length, 2.04 },
        { "2,04 m", Kind.Length, 2.04 },
        { "0,500 m", Kind.Length, 0.5 },
        { "1.234,5 mm", Kind.Length, 1.2345 },
        { "1,234.5 mm", Kind.Length, 1.2345 },
        { "1,234,567 mm", Kind.Length, 1234.567 },
        { "1 mile", Kind.Length, 1609.344 },
        { "110 km/h", Kind.Speed, 110 / 3.6 },
        { "120 kph", Kind.Speed, 120 / 3.6 },
        { "75 mph", Kind.Speed, 33.528 },
        { "2400 rpm", Kind.Rotation, 40 },
        { "2400 rev/min", Kind.Rotation, 40 },
        { "2400 1/min", Kind.Rotation, 40 },
        { "2400 r/min", Kind.Rotation, 40 },
        { "1450 kg", Kind.Mass, 1450 },
        { "180 Nm", Kind.Torque, 180 },
        { "100 lb-ft", Kind.Torque, 135.58179483314004 },
        { "100 ft-lb", Kind.Torque, 135.58179483314004 },
        { "66 kW", Kind.Power, 66_000 },
        { "90 PS", Kind.Power, 66_194.8875 },
        { "0.85 m2", Kind.Area, 0.85 },
        { "0.85 m²", Kind.Area, 0.85 },
        { "2.2 bar", Kind.Pressure, 220_000 },
        { "3 %", Kind.Share, 0.03 },
        { "20 1/2", Kind.Number, 20.5 },
        { "4.10:1", Kind.Number, 4.1 },
        { "43/9", Kind.Number, 43 / 9.0 },
        { "-2.5", Kind.Number, -2.5 },
        { "−2.5", Kind.Number, -2.5 },
        { "–2.5", Kind.Number, -2.5 },
        { "¼ in", Kind.Length, 0.00635 },
        { "1¾ in", Kind.Length, 0.04445 },
        { "⅓", Kind.Number, 1 / 3.0 },
        { "2⅔", Kind.Number, 8 / 3.0 },
        { "⅛ in", Kind.Length, 0.003175 },
        { "⅜ in", Kind.Length, 0.009525 },
        { "⅝ in", Kind.Length, 0.015875 },
        { "⅞ in", Kind.Length, 0.022225 },
        { "1⁄2 in", Kind.Length, 0.0127 },
        { "6’ 2”", Kind.Length, 1.8796 },
        { "6‘ 2“", Kind.Length, 1.8796 },
        { "12 040 mm", Kind.Length, 12.04 },
        { "1 234 567 mm", Kind.Length, 1234.567 },
        { "2 040.5 mm", Kind.Length, 2.0405 },
        { "2 040,5 mm", Kind.Length, 2.0405 },
        { "1.234.567 mm", Kind.Length, 1234.567 },
        { "1,2345 m", Kind.Length, 1.2345 },
        { "12,34 m", Kind.Length, 12.34 },
        { ".5 m", Kind.Length, 0.5 },
        { "2 040", Kind.Number, 2040 },
        { "- 2.5", Kind.Number, -2.5 },
        { "123,456,789 mm", Kind.Length, 123_456.789 },
        { ",500 m", Kind.Length, 0.5 },
        { "5. m", Kind.Length, 5 },
        { "3 m 20 mm", Kind.Length, 3.02 },
        { "1/ 2 in", Kind.Length, 0.0127 },
        { "1000 1/min", Kind.Rotation, 1000 / 60.0 },
    };

    [Theory]
    [MemberData(nameof(Styles))]
    public void A_quantity_is_read_the_way_people_write_it(string text, Kind kind, double expected)
        => Assert.Equal(expected, QuantityText.Read(text, kind).OrRefuse().Value, 1e-12 * Math.Max(1, Math.Abs(expected)));

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void The_machines_language_changes_nothing(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);
            foreach (var row in Styles)
            {
                var (text, kind, expected) = row.Data;
                Assert.Equal(expected, QuantityText.Read(text, kind).OrRefuse().Value, 1e-12 * Math.Max(1, Math.Abs(expected)));
            }

            Assert.Equal("'30 INN': the unit 'INN' is not known; for a length use m, mm, cm, in, ft, mi, km.", Refused("30 INN", Kind.Length).Message);
            Assert.Equal("4.1", Rounded.Exact(4.1));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("30 inn", Kind.Length, "unknown-unit", "inn")]
    [InlineData("", Kind.Length, "empty", "missing")]
    [InlineData("   ", Kind.Length, "empty", "missing")]
    [InlineData("in", Kind.Length, "not-a-number", "in")]
    [InlineData("abc", Kind.Number, "not-a-number", "abc")]
    [InlineData("27", Kind.Length, "no-unit", "27")]
    [InlineData("20 50", Kind.Number, "several", "begins at '50'")]
    [InlineData("2 x04", Kind.Length, "unknown-unit", "'x'")]
    [InlineData("27 -3 in", Kind.Length, "unknown-unit", "'-'")]
    [InlineData("4.10:", Kind.Number, "unknown-unit", "':'")]
    [InlineData("6 ft-2 in", Kind.Length, "not-a-number", "'-2 in'")]
    [InlineData("6\"-ft", Kind.Length, "not-a-number", "'-ft'")]
    [InlineData("100 lb-", Kind.Mass, "not-a-number", "'-'")]
    [InlineData("± 5", Kind.Number, "not-a-number", "reading stopped at '± 5'")]
    [InlineData("4.08 ± ", Kind.Number, "not-a-number", "stops where a number is expected")]
    [InlineData("6 ft 2", Kind.Length, "no-unit", "6 ft 2")]
    [InlineData("2 040 1/2 mm", Kind.Length, "no-unit", "2 040")]
    [InlineData("20 5", Kind.Number, "several", "begins at '5'")]
    [InlineData("20 1/2 3", Kind.Number, "several", "begins at '3'")]
    [InlineData("20 rpm", Kind.Number, "wrong-kind", "engine speed")]
    [InlineData("20 1/2/3", Kind.Number, "unknown-unit", "left over")]
    [InlineData("1 2345 mm", Kind.Length, "no-unit", "1 2345")]
    [InlineData("12.345.67 mm", Kind.Length, "not-a-number", "12.345.67")]
    [InlineData("1234.567.890 mm", Kind.Length, "not-a-number", "1234.567.890")]
    [InlineData(".", Kind.Number, "not-a-number", "'.'")]
    [InlineData("5 ± 1 km/h", Kind.Length, "no-unit", "no unit")]
    [InlineData("27 km/h", Kind.Length, "wrong-kind", "speed")]
    [InlineData("27 in", Kind.Speed, "wrong-kind", "length")]
    [InlineData("2 in 6 ft", Kind.Length, "unit-order", "smaller")]
    [InlineData("6' 6'", Kind.Length, "unit-order", "smaller")]
    [InlineData("20 1/", Kind.Number, "fraction", "/")]
    [InlineData("1/0", Kind.Number, "fraction", "1/0")]
    [InlineData("1.2.3 m", Kind.Length, "not-a-number", "1.2.3")]
    [InlineData("1,2,3 m", Kind.Length, "not-a-number", "1,2,3")]
    [InlineData("1,2.5 m", Kind.Length, "not-a-number", "1,2.5")]
    [InlineData("1.2,5 m", Kind.Length, "not-a-number", "1.2,5")]
    [InlineData("6' -2\"", Kind.Length, "not-a-number", "-2")]
    [InlineData("4.08 ± -0.01", Kind.Number, "negative", "zero or more")]
    [InlineData("4.08 ±", Kind.Number, "not-a-number", "4.08 ±")]
    public void What_cannot_be_read_is_named(string text, Kind kind, string code, string named)
    {
        var refusal = Refused(text, kind);

        Assert.Equal(code, refusal.Code);
        Assert.Contains(named, refusal.Message, StringComparison.Ordinal);
        Assert.NotEmpty(refusal.Example);
    }

    [Theory]
    [InlineData("1,234 mm", "1234", "1.234")]
    [InlineData("12,345 mm", "12345", "12.345")]
    [InlineData("6' 1,250\"", "1250", "1.250")]
    public void A_comma_that_could_be_either_is_refused_with_both_readings(string text, string one, string other)
    {
        var refusal = Refused(text, Kind.Length);

        Assert.Equal("ambiguous", refusal.Code);
        Assert.Contains($"{one} or {other}", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_that_no_quantity_needs_is_too_long()
    {
        var refusal = Refused(new string('1', 201), Kind.Length);

        Assert.Equal("too-long", refusal.Code);
        Assert.True(refusal.Message.Length < 100);
    }

    // 1.95996 is the normal distribution's 97.5 % point: ± is a 95 % half-width, u= a standard uncertainty.
    [Theory]
    [InlineData("4.08±0.03", Kind.Number, 0.03 / 1.959964)]
    [InlineData("4.08 ± 0.03", Kind.Number, 0.03 / 1.959964)]
    [InlineData("4.08 +/- 0.03", Kind.Number, 0.03 / 1.959964)]
    [InlineData("4.08 u=0.015", Kind.Number, 0.015)]
    [InlineData("4 ± 1 %", Kind.Number, 0.04 / 1.959964)]
    [InlineData("2.04 ± 0.01 m", Kind.Length, 0.01 / 1.959964)]
    [InlineData("2.04 m ± 10 mm", Kind.Length, 0.01 / 1.959964)]
    [InlineData("2040 ± 10 mm", Kind.Length, 0.01 / 1.959964)]
    [InlineData("2040 mm ± 10", Kind.Length, 0.01 / 1.959964)]
    [InlineData("110 km/h ± 3.6", Kind.Speed, 1 / 1.959964)]
    [InlineData("4.08 +- 0.03", Kind.Number, 0.03 / 1.959964)]
    [InlineData("4.08 u = 0.015", Kind.Number, 0.015)]
    [InlineData("-4 ± 1 %", Kind.Number, 0.04 / 1.959964)]
    [InlineData("52 % ± 2 %", Kind.Share, 0.02 / 1.959964)]
    [InlineData("2.04 m ± 1 %", Kind.Length, 0.0204 / 1.959964)]
    [InlineData("2.04 m u=5 mm", Kind.Length, 0.005)]
    [InlineData("4.08 ± 0", Kind.Number, 0)]
    [InlineData("4.08", Kind.Number, 0)]
    public void An_uncertainty_is_read_with_it(string text, Kind kind, double expected)
        => Assert.Equal(expected, QuantityText.Read(text, kind).OrRefuse().StandardUncertainty, 1e-7);

    [Fact]
    public void The_unit_and_the_words_that_were_typed_are_kept()
    {
        var typed = QuantityText.Read("  6' 2\" ", Kind.Length).OrRefuse();

        Assert.Equal("6' 2\"", typed.Text);
        Assert.Equal(Units.Foot, typed.Unit);
        Assert.Equal(6 + (2 / 12.0), typed.InUnit, 1e-12);
    }

    [Fact]
    public void A_bare_number_takes_the_unit_that_was_asked_for()
        => Assert.Equal(40, QuantityText.Read("2400", Kind.Rotation, Units.RevolutionPerMinute).OrRefuse().Value, 1e-12);

    // A bench counts engines in rev/min, and weighs in kg; lengths, road speeds and powers come in two units or more, so theirs is typed.
    [Theory]
    [InlineData(Kind.Number, "")]
    [InlineData(Kind.Rotation, "rev/min")]
    [InlineData(Kind.Mass, "kg")]
    [InlineData(Kind.Torque, "N·m")]
    [InlineData(Kind.Length, null)]
    [InlineData(Kind.Speed, null)]
    [InlineData(Kind.Power, null)]
    [InlineData(Kind.Area, null)]
    [InlineData(Kind.Pressure, null)]
    public void A_bare_number_has_the_usual_unit_of_its_kind_if_there_is_one(Kind kind, string? unit)
    {
        var read = QuantityText.Read("24", kind);

        if (unit is null) Assert.Equal("no-unit", read.Refusal!.Code);
        else Assert.Equal((unit, true), (read.OrRefuse().Unit.Symbol, read.OrRefuse().IsBare));
    }

    // What was taken for granted has to be said, and a unit behind the ± was typed.
    [Theory]
    [InlineData("2400", true)]
    [InlineData("2400 rpm", false)]
    [InlineData("2400 ± 50 rpm", false)]
    [InlineData("2400 ± 50", true)]
    public void Whether_a_unit_was_typed_is_remembered(string text, bool bare) => Assert.Equal(bare, QuantityText.Read(text, Kind.Rotation).OrRefuse().IsBare);

    [Fact]
    public void A_ratio_with_its_uncertainty_has_no_unit_either() => Assert.True(QuantityText.Read("4.08 ± 0.03", Kind.Number).OrRefuse().IsBare);

    [Fact]
    public void Two_hundred_signs_are_read()
        => Assert.Equal(1, QuantityText.Read(new string(' ', 99) + "1" + new string(' ', 100), Kind.Number).OrRefuse().Value);

    // A comma that could be either: the example has the unit that was typed, so that it can be typed as it stands.
    [Theory]
    [InlineData("1,234 mm", "1.234mm")]
    [InlineData("1,234", "1.234")]
    [InlineData("1,234 foo", "1.234")]
    [InlineData("6' 1,250\"", "1.250\"")]
    public void The_example_of_an_ambiguous_comma_has_its_unit(string text, string example)
        => Assert.Equal(example, Refused(text, Kind.Length).Example);

    [Fact]
    public void A_plain_number_carries_no_uncertainty()
        => Assert.Equal("uncertainty", QuantityText.ReadNumber("20.5 ± 0.1").Refusal?.Code);

    [Fact]
    public void A_typed_uncertainty_becomes_the_inputs()
    {
        var measured = QuantityText.Read("4.08 u=0.015", Kind.Number).OrRefuse().ToMeasured("axle");

        Assert.Equal(0.015, measured.StandardUncertainty, 1e-12);
        Assert.Equal("axle", Assert.Single(measured.Budget()).Input.Name);
        Assert.True(QuantityText.Read("4.08", Kind.Number).OrRefuse().ToMeasured("axle").IsExact);
    }

    private static Refusal Refused(string text, Kind kind) => QuantityText.Read(text, kind).Refusal ?? throw new InvalidOperationException($"'{text}' was read.");
}
