using BuildLog.Gearing.Tyres;
using BuildLog.Gearing.Tyres.Tables;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Tyres;

/// <summary>What each notation makes of a marking; the tables' rows are from memory unless a test says otherwise.</summary>
public sealed class TyreNotationsTests
{
    // 31x10.50R15LT: (31 − 0.5) · 25.4 = 774.7 mm; remembered table 775.
    [Theory]
    [InlineData("31x10.50R15LT", 774.7, 266.7, 15, Construction.Radial)]
    [InlineData("31 X 10.50 R 15 LT", 774.7, 266.7, 15, Construction.Radial)]
    [InlineData("LT31×10,50R15 109Q", 774.7, 266.7, 15, Construction.Radial)]
    [InlineData("33x12.50-15", 825.5, 317.5, 15, Construction.Bias)]
    public void A_flotation_size_is_half_an_inch_lower_than_it_says(string text, double diameter, double section, double rim, Construction construction)
    {
        var size = Read(text);

        Assert.Equal(("flotation", DimensionsFrom.Formula, true), (size.Notation, size.Dimensions.From, size.IsCommercial));
        Assert.Equal(diameter / 1000, size.OverallDiameter, 1e-9);
        Assert.Equal(section / 1000, size.SectionWidth, 1e-9);
        Assert.Equal(rim * 0.0254, size.RimDiameter, 1e-12);
        Assert.Equal(construction, size.Construction);
        Assert.Null(size.AspectRatio);
        Assert.Contains("from memory", size.Dimensions.Source, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("5.60-15", 650, 145, Construction.Bias, false)]
    [InlineData("5.60 x 15", 650, 145, Construction.Bias, false)]
    [InlineData("5,60-15", 650, 145, Construction.Bias, false)]
    [InlineData("7.50R16", 802, 210, Construction.Radial, true)]
    [InlineData("7.50-16LT", 808, 220, Construction.Bias, true)]
    [InlineData("8.5R17.5 121/120L", 802, 215, Construction.Radial, true)]
    public void A_numeric_size_has_its_dimensions_from_a_table(string text, double diameter, double section, Construction construction, bool commercial)
    {
        var size = Read(text);

        Assert.Equal(("numeric", DimensionsFrom.Table, commercial), (size.Notation, size.Dimensions.From, size.IsCommercial));
        Assert.Equal((diameter / 1000, section / 1000, construction), (size.OverallDiameter, size.SectionWidth, size.Construction));
        Assert.EndsWith("from memory", size.Dimensions.Source, StringComparison.Ordinal);
        Assert.Equal(0.015, size.Dimensions.Spread);
    }

    // However the dash is written, or left out, it is one size; tables from memory.
    [Theory]
    [InlineData("6.00 16", "6.00-16")]
    [InlineData("6,00 16", "6.00-16")]
    [InlineData("6.50 16 LT", "6.50-16LT")]
    [InlineData("6.00 16 8PR", "6.00-16 8PR")]
    [InlineData("7.50/16", "7.50-16")]
    [InlineData("7.50/16 LT 112/107N", "7.50-16LT 112/107N")]
    [InlineData("750-16", "7.50-16")]
    [InlineData("750 16", "7.50-16")]
    [InlineData("750R16", "7.50R16")]
    [InlineData("750 R 16 LT", "7.50R16LT")]
    [InlineData("750x16", "7.50-16")]
    [InlineData("640-13", "6.40-13")]
    [InlineData("520-10", "5.20-10")]
    [InlineData("825-16LT", "8.25-16LT")]
    [InlineData("185 15", "185R15")]
    [InlineData("185 15 C", "185R15C")]
    public void A_dash_left_out_or_a_point_left_out_is_the_same_size(string text, string usual)
    {
        var size = Read(text);

        Assert.Equal(text, size.Designation);
        Assert.Equal(Read(usual) with { Designation = text }, size);
    }

    // A fraction, a metric size whose aspect ratio was forgotten, a width in millimetres, and what is too wide or too narrow in either.
    [Theory]
    [InlineData("7/16")]
    [InlineData("8 16")]
    [InlineData("205 65")]
    [InlineData("205 55 R16")]
    [InlineData("215 16")]
    [InlineData("205/16")]
    [InlineData("750/16")]
    [InlineData("555-16")]
    [InlineData("525-16")]
    [InlineData("290-13")]
    [InlineData("752-16")]
    [InlineData("1000-16")]
    [InlineData("6.0016")]
    [InlineData("6.00 60")]
    [InlineData("640.5-13")]
    public void What_is_not_surely_such_a_size_is_refused(string text) => Assert.NotNull(TyreSizeText.Read(text).Refusal);

    [Fact]
    public void A_forgotten_aspect_ratio_is_still_what_is_asked_for()
        => Assert.Contains("after '205' '/' and the aspect ratio", TyreSizeText.Read("205 55 R16").Refusal!.Message, StringComparison.Ordinal);

    // One of each notation and of each way it can be written: leniency in one takes nothing from another.
    [Theory]
    [InlineData("205/65R15 94H", "metric", 647.5, Construction.Radial)]
    [InlineData("205/65 15", null, 0, Construction.Radial)]
    [InlineData("P215/75 R 15", "metric", 703.5, Construction.Radial)]
    [InlineData("LT235/85R16 120/116Q", "metric", 805.9, Construction.Radial)]
    [InlineData("175/80-13", "metric", 610.2, Construction.Bias)]
    [InlineData("550/45-22.5", "metric", 1066.5, Construction.Bias)]
    [InlineData("500/45R20", "metric", 958, Construction.Radial)]
    [InlineData("165 SR 14", "metric", 622, Construction.Radial)]
    [InlineData("185-15", "metric", 674, Construction.Bias)]
    [InlineData("195R14C", "metric", 666, Construction.Radial)]
    [InlineData("31x10.50R15LT", "flotation", 774.7, Construction.Radial)]
    [InlineData("33 x 12.50-15", "flotation", 825.5, Construction.Bias)]
    [InlineData("5.60 x 15", "numeric", 650, Construction.Bias)]
    [InlineData("7.50 R 16", "numeric", 802, Construction.Radial)]
    [InlineData("7 R 16", "numeric", 778, Construction.Radial)]
    [InlineData("11R22.5", "numeric", 1050, Construction.Radial)]
    [InlineData("G78-15", "alpha-numeric", 703.5, Construction.Bias)]
    [InlineData("GR70-15", "alpha-numeric", 696, Construction.Radial)]
    public void Each_notation_keeps_its_own_texts(string text, string? notation, double diameter, Construction construction)
    {
        if (!TyreSizeText.Read(text).Understood(out var size))
        {
            Assert.Null(notation);
            return;
        }

        Assert.Equal((notation, construction), (size.Notation, size.Construction));
        Assert.Equal(diameter / 1000, size.OverallDiameter, 1e-6);
    }

    // Read in EC heavy-duty CO2 declaration data: 11 R22.5 is 1050 mm; a row that was read is as sure as a formula.
    [Fact]
    public void A_row_that_was_read_goes_before_one_that_is_remembered()
    {
        var size = Read("11R22.5 148/145L");

        Assert.Equal(("EC heavy-duty CO2 declaration data", 1.050, 0.01), (size.Dimensions.Source, size.OverallDiameter, size.Dimensions.Spread));
        Assert.Equal((148, 145), (size.LoadIndex, size.LoadIndexDual));
    }

    [Theory]
    [InlineData("6.00-16", 732, "as 6.00-16LT: UN R54 annex 5, part II, from memory")]
    [InlineData("7.50R16LT", 802, "as 7.50R16: UN R54 annex 5, part I, from memory")]
    [InlineData("6.70R15", 710, "as 6.70-15: UN R30 annex 5, table I, from memory")]
    public void A_size_that_is_not_tabled_takes_its_sisters_dimensions_and_says_so(string text, double diameter, string source)
    {
        var size = Read(text);

        Assert.Equal((diameter / 1000, source), (size.OverallDiameter, size.Dimensions.Source));
        Assert.Equal(0.015, size.Dimensions.Spread);
    }

    // 5.25-18: 18 · 25.4 + 2 · 5.25 · 25.4 = 723.9 mm.
    [Fact]
    public void A_size_without_a_sister_is_worked_out_and_less_sure()
    {
        var size = Read("5.25-18");

        Assert.Equal((DimensionsFrom.Formula, 0.035), (size.Dimensions.From, size.Dimensions.Spread));
        Assert.Equal(0.7239, size.OverallDiameter, 1e-9);
        Assert.Contains("roll it out", size.Dimensions.Source, StringComparison.Ordinal);
    }

    // What the height misses each row of each table by is what u says: root mean square within u, nineteen of twenty within two u.
    [Fact]
    public void The_spread_of_sizes_without_a_table_is_what_the_rule_misses_the_tables_by()
    {
        var misses = NumericTables.All.SelectMany(table => table.Rows)
            .Select(row => ((row.Rim + (2 * Gearing.Tyres.Notations.Numeric.Height(row.Rim) * row.Width)) * 25.4 / row.Diameter) - 1)
            .ToList();

        Assert.InRange(Math.Sqrt(misses.Average(miss => miss * miss)), 0.02, Gearing.Tyres.Notations.Numeric.FormulaSpread);
        Assert.True(misses.Count(miss => Math.Abs(miss) > 2 * Gearing.Tyres.Notations.Numeric.FormulaSpread) <= misses.Count / 20);
    }

    [Fact]
    public void The_share_of_metric_sizes_without_an_aspect_ratio_is_that_of_their_table()
        => Assert.All(RadialMetricTable.Rows, row => Assert.InRange(((row.Rim * 25.4) + (2 * Gearing.Tyres.Notations.MetricWithoutAspect.Height * row.Width)) / row.Diameter, 0.98, 1.02));

    [Theory]
    [InlineData("165R13", 596, DimensionsFrom.Table, null)]
    [InlineData("165 SR 13", 596, DimensionsFrom.Table, "S")]
    [InlineData("195R14C 106/104N", 666, DimensionsFrom.Table, "N")]
    [InlineData("195R15", 696.9, DimensionsFrom.Formula, null)]
    public void A_metric_size_without_an_aspect_ratio_has_its_height_from_a_table_or_a_share(string text, double diameter, DimensionsFrom from, string? symbol)
    {
        var size = Read(text);

        Assert.Equal(("metric", from, symbol), (size.Notation, size.Dimensions.From, size.SpeedSymbol));
        Assert.Equal(diameter / 1000, size.OverallDiameter, 1e-9);
        Assert.Null(size.AspectRatio);
    }

    // G78-15 was replaced by P215/75R15: 381 + 322.5 = 703.5 mm; remembered rows for LT: H78-15LT 727, L78-16LT 775, within two per cent and a half.
    [Theory]
    [InlineData("G78-15", 703.5, Construction.Bias, 0.78)]
    [InlineData("GR78-15", 703.5, Construction.Radial, 0.78)]
    [InlineData("G78R15", 703.5, Construction.Radial, 0.78)]
    [InlineData("G70-15", 696, Construction.Bias, 0.70)]
    [InlineData("E78-14", 648.1, Construction.Bias, 0.78)]
    public void A_load_letter_is_the_metric_size_that_replaced_it(string text, double diameter, Construction construction, double aspect)
    {
        var size = Read(text);

        Assert.Equal(("alpha-numeric", DimensionsFrom.Table, construction, aspect), (size.Notation, size.Dimensions.From, size.Construction, size.AspectRatio));
        Assert.Equal(diameter / 1000, size.OverallDiameter, 1e-9);
        Assert.Equal(0.02, size.Dimensions.Spread);
    }

    [Theory]
    [InlineData("H78-15LT", 727)]
    [InlineData("L78-16LT", 775)]
    public void The_conversion_of_letters_agrees_with_remembered_rows(string text, double diameter) => Assert.Equal(1, Read(text).OverallDiameter * 1000 / diameter, 0.025);

    [Theory]
    [InlineData("LT235/85R16", true)]
    [InlineData("235/85R16LT", true)]
    [InlineData("195/75R16C", true)]
    [InlineData("P215/75R15", false)]
    [InlineData("205/65R15", false)]
    public void LT_and_C_are_no_passenger_tyres(string text, bool commercial) => Assert.Equal(commercial, Read(text).IsCommercial);

    [Theory]
    [InlineData("205/65R15", 0.01)]
    [InlineData("31x10.50R15LT", 0.015)]
    [InlineData("G78-15", 0.02)]
    public void The_spread_of_the_source_is_in_the_circumference(string text, double spread)
    {
        var size = Read(text);
        var factor = size.Construction == Construction.Radial ? 0.010 / 0.971 : 0.015 / 0.952;

        Assert.Equal(Math.Sqrt((spread * spread) + (factor * factor)), size.RollingCircumference.RelativeUncertainty, 1e-12);
    }

    // Laws: an inch more of nominal diameter is an inch more of tyre; ten millimetres of width at 50 % are ten of diameter.
    [Fact]
    public void Sizes_rise_with_what_they_are_marked_by()
        => Gen.Select(Gen.Int[25, 40], Gen.Int[20, 40]).Sample((inches, tens) =>
        {
            Assert.Equal(0.0254, Read($"{inches + 1}x10.50R15LT").OverallDiameter - Read($"{inches}x10.50R15LT").OverallDiameter, 1e-9);
            Assert.Equal(0.010, Read($"{(10 * tens) + 15}/50R15").OverallDiameter - Read($"{(10 * tens) + 5}/50R15").OverallDiameter, 1e-9);
        });

    private static TyreSize Read(string text) => TyreSizeText.Read(text).OrRefuse();
}
