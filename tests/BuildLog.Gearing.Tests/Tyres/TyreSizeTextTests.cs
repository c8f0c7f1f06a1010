using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Tyres;

public sealed class TyreSizeTextTests
{
    // Width mm, aspect %, rim in.
    [Theory]
    [InlineData("205/65R15 94H", 205, 65, 15, 94, null, "H")]
    [InlineData("205/65 R 15", 205, 65, 15, null, null, null)]
    [InlineData("205/65r15 94h", 205, 65, 15, 94, null, "H")]
    [InlineData("P215/75R15", 215, 75, 15, null, null, null)]
    [InlineData("P215/75 R 15 100S", 215, 75, 15, 100, null, "S")]
    [InlineData("LT235/85R16 120/116Q", 235, 85, 16, 120, 116, "Q")]
    [InlineData("225/45ZR17", 225, 45, 17, null, null, null)]
    [InlineData("205/70 VR 15", 205, 70, 15, null, null, null)]
    [InlineData("185/70 HR 14", 185, 70, 14, null, null, "H")]
    [InlineData("225/45ZR17 91W XL", 225, 45, 17, 91, null, "W")]
    [InlineData("LT215/85R16 8PR 110/107Q", 215, 85, 16, 110, 107, "Q")]
    [InlineData("225/45ZR17 (94Y)", 225, 45, 17, 94, null, "(Y)")]
    [InlineData("195/75R16C 107/105R", 195, 75, 16, 107, 105, "R")]
    [InlineData("205/65R15 94H XL", 205, 65, 15, 94, null, "H")]
    [InlineData("205/65R15 94H M+S XL TL", 205, 65, 15, 94, null, "H")]
    [InlineData("215/75 R17.5 126/124M", 215, 75, 17.5, 126, 124, "M")]
    [InlineData("315/80R22.5 156/150A8", 315, 80, 22.5, 156, 150, "A8")]
    public void A_metric_marking_is_read_with_its_prefixes_and_suffixes(string text, double width, double aspect, double rim, int? load, int? dual, string? symbol)
    {
        var size = TyreSizeText.Read(text).OrRefuse();

        Assert.Equal(width / 1000, size.SectionWidth, 1e-12);
        Assert.Equal(aspect / 100, size.AspectRatio!.Value, 1e-12);
        Assert.Equal(rim * 0.0254, size.RimDiameter, 1e-12);
        Assert.Equal((load, dual, symbol), (size.LoadIndex, size.LoadIndexDual, size.SpeedSymbol));
        Assert.Equal(text, size.Designation);
    }

    [Theory]
    [InlineData("205/65R15", Construction.Radial)]
    [InlineData("175/80-13", Construction.Bias)]
    [InlineData("175/80D13", Construction.Bias)]
    [InlineData("175/80B13", Construction.Bias)]
    public void R_is_radial_and_a_dash_d_or_b_is_bias(string text, Construction construction)
        => Assert.Equal(construction, TyreSizeText.Read(text).OrRefuse().Construction);

    [Theory]
    [InlineData("205", "after '205' '/' and the aspect ratio is expected")]
    [InlineData("205/", "after '205/' the aspect ratio in per cent is expected")]
    [InlineData("205/65", "after '205/65' R for radial, or '-' for bias is expected")]
    [InlineData("205/65X15", "after '205/65' R for radial, or '-' for bias is expected, not 'X15'")]
    [InlineData("205/65R", "after '205/65R' the rim diameter in inches is expected")]
    [InlineData("205/65Rfifteen", "after '205/65R' the rim diameter in inches is expected, not 'FIFTEEN'")]
    [InlineData("205/65R15 94", "after '205/65R15 94' a speed symbol such as H is expected")]
    [InlineData("205/65R15 94H blue", "after '205/65R15 94H' nothing more is expected, not 'BLUE'")]
    [InlineData("205/65R15 (94H", "after '205/65R15 (94H' ')' is expected")]
    [InlineData("205/65R15 ()", "after '205/65R15 (' a load index is expected, not ')'")]
    [InlineData("205/65R15 94/H", "the second load index is expected, not 'H'")]
    [InlineData("31", "after '31' 'x' and the section width in inches is expected")]
    [InlineData("31x", "after '31X' the section width in inches is expected")]
    [InlineData("31x10.50", "after '31X10.50' R for radial, or '-' for bias is expected")]
    [InlineData("31x10.50R", "the rim diameter in inches is expected")]
    [InlineData("6.00", "after '6.00' R for radial, or '-' for bias is expected")]
    [InlineData("6.00-", "after '6.00-' the rim diameter in inches is expected")]
    [InlineData("6.00-16 blue", "after '6.00-16' nothing more is expected, not 'BLUE'")]
    [InlineData("165R", "after '165R' the rim diameter in inches is expected")]
    [InlineData("G78", "after 'G78' '-' for bias, or R for radial is expected")]
    [InlineData("G78-", "the rim diameter in inches is expected")]
    [InlineData("round", "the section width in millimetres should come first")]
    [InlineData("", "a tyre size should come first")]
    public void A_refusal_names_where_reading_stopped(string text, string says)
    {
        var refusal = TyreSizeText.Read(text).Refusal!;

        Assert.Equal("tyre-size", refusal.Code);
        Assert.Contains(says, refusal.Message, StringComparison.Ordinal);
        Assert.Null(TyreSizeText.Read(refusal.Example).Refusal);
    }

    [Theory]
    [InlineData("90/65R15", "90")]
    [InlineData("560/65R15", "560")]
    [InlineData("205.5/65R15", "205.5")]
    [InlineData("205/15R15", "15 is no aspect ratio")]
    [InlineData("205/120R15", "120 is no aspect ratio")]
    [InlineData("205/65R7", "7 is no rim diameter")]
    [InlineData("205/65R31", "31 is no rim diameter")]
    [InlineData("205/65R15 94I", "'I' is no speed symbol")]
    [InlineData("205/65R15 94A9", "'A9' is no speed symbol")]
    [InlineData("205/65R15 201H", "201 is no load index")]
    [InlineData("205/65R15 94/201H", "201 is no load index")]
    [InlineData("205/65R15 94.5H", "94.5 is no load index")]
    [InlineData("31x3R15", "3 is no section width in inches")]
    [InlineData("31x10.50R28", "leaves no height over a rim of 28 in")]
    [InlineData("6.00-7", "7 is no rim diameter")]
    [InlineData("G65-15", "65 is no aspect ratio of a size with a letter")]
    [InlineData("A70-13", "the letter A is not among those known in the 70 series (C, D, E, F, G, H, J, L)")]
    [InlineData("205/70VR15 94S", "VR is above 210 km/h, which 'S' is not")]
    [InlineData("205/65ZR15 94H", "ZR is above 240 km/h")]
    [InlineData("27 in", "no tyre size")]
    public void What_no_tyre_has_is_refused(string text, string says)
        => Assert.Contains(says, TyreSizeText.Read(text).Refusal!.Message, StringComparison.Ordinal);

    // The first and the last number of each range are sizes.
    [Theory]
    [InlineData("95/20R8")]
    [InlineData("555/110R30")]
    [InlineData("115R13")]
    [InlineData("265R13")]
    [InlineData("22x6R8")]
    [InlineData("50x20R30")]
    [InlineData("36x10.50R30")]
    [InlineData("3-8")]
    [InlineData("18-30")]
    [InlineData("205/65R15 0H")]
    [InlineData("205/65R15 200/200H")]
    [InlineData("B78-13")]
    [InlineData("N50-15")]
    public void The_ends_of_a_range_are_sizes(string text) => Assert.Null(TyreSizeText.Read(text).Refusal);

    [Theory]
    [InlineData("94/65R15", "94 mm is no section width")]
    [InlineData("556/65R15", "556 mm is no section width")]
    [InlineData("205/19R15", "19 is no aspect ratio")]
    [InlineData("205/111R15", "111 is no aspect ratio")]
    [InlineData("105R13", "is no tyre size")]
    [InlineData("160R13", "is no tyre size")]
    [InlineData("21x6R8", "is no tyre size")]
    [InlineData("51x12R15", "is no tyre size")]
    [InlineData("31x5.9R15", "5.9 is no section width in inches")]
    [InlineData("31x21R15", "21 is no section width in inches")]
    [InlineData("35.9x10.50R30", "leaves no height over a rim of 30 in")]
    [InlineData("2.9-16", "is no tyre size")]
    [InlineData("18.1-16", "is no tyre size")]
    [InlineData("O78-13", "no tyre size")]
    public void Just_beyond_them_is_none(string text, string says) => Assert.Contains(says, TyreSizeText.Read(text).Refusal!.Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("205/65R15 H", "before the speed symbol H a load index such as 94 is expected")]
    [InlineData("205/65R15 94/98H", "the load index of single fitment stands first, and 94 is below 98 of dual fitment")]
    [InlineData("205/65R15 I", "nothing more is expected, not 'I'")]
    [InlineData("205/65R15 H blue", "nothing more is expected, not 'H BLUE'")]
    [InlineData("205/65R15 94H H", "nothing more is expected, not 'H'")]
    public void What_stands_behind_a_size_has_its_order(string text, string says) => Assert.Contains(says, TyreSizeText.Read(text).Refusal!.Message, StringComparison.Ordinal);

    // A letter before the R is a speed symbol of old (Directive 92/23/EEC, annex I: S 180, T 190, Q 160 km/h); V and Z only say above 210 and 240.
    [Theory]
    [InlineData("165SR14", 180)]
    [InlineData("165 QR 14", 160)]
    [InlineData("185/70TR13", 190)]
    [InlineData("205/70VR15", null)]
    [InlineData("205/70VR15 94V", 240)]
    [InlineData("225/45ZR17 94W", 270)]
    public void A_speed_letter_before_the_R_counts_where_none_follows(string text, int? limit) => Assert.Equal(limit, TyreSizeText.Read(text).OrRefuse().SpeedLimitKmh);

    // ZR: Directive 92/23/EEC, annex I; VR and the brackets from memory. What says how fast says no more than that.
    [Theory]
    [InlineData("225/45ZR17", null, 240)]
    [InlineData("205/70 VR 15", null, 210)]
    [InlineData("225/45ZR17 (94Y)", null, 300)]
    [InlineData("225/45R17 (94Y) XL", null, 300)]
    [InlineData("225/45ZR17 94Y", 300, null)]
    [InlineData("225/45ZR17 91W", 270, null)]
    [InlineData("205/65R15", null, null)]
    public void A_marking_may_say_only_what_it_is_made_for_more_than(string text, int? limit, int? above)
    {
        var size = TyreSizeText.Read(text).OrRefuse();

        Assert.Equal((limit, above), (size.SpeedLimitKmh, size.SpeedAboveKmh));
    }

    // No marking is longer than a tyre's side wall has room for.
    [Fact]
    public void Sixty_signs_are_a_marking_and_sixty_one_are_none()
    {
        var sixty = "205/65R15 94H" + string.Concat(Enumerable.Repeat(" XL", 15)) + " T";

        Assert.Equal(60, sixty.Length);
        Assert.Contains("nothing more is expected", TyreSizeText.Read(sixty).Refusal!.Message, StringComparison.Ordinal);
        Assert.Contains("should come first", TyreSizeText.Read(sixty + "L").Refusal!.Message, StringComparison.Ordinal);
        Assert.Null(TyreSizeText.Read(sixty[..^2]).Refusal);
    }

    // 4 mm of tread take 8 mm off the diameter: 205/65R15 is 381 + 266.5 = 647.5 mm new, 639.5 mm worn.
    [Fact]
    public void Wear_takes_twice_its_depth_off()
    {
        var size = TyreSizeText.Read("205/65R15").OrRefuse();

        Assert.Equal(0.6475, size.OverallDiameter, 1e-12);
        Assert.Equal(0.6395, size.WornBy(QuantityText.Read("4mm", Kind.Length).OrRefuse()).OrRefuse().OverallDiameter, 1e-12);
    }

    [Theory]
    [InlineData("0 mm")]
    [InlineData("16 mm")]
    public void A_new_tyre_and_a_bald_one_of_a_fortieth_of_its_height_can_be(string depth)
        => Assert.Null(TyreSizeText.Read("205/65R15").OrRefuse().WornBy(QuantityText.Read(depth, Kind.Length).OrRefuse()).Refusal);

    [Theory]
    [InlineData("-1 mm")]
    [InlineData("17 mm")]
    [InlineData("30 mm")]
    public void No_tyre_wears_by_more_than_its_tread(string depth)
        => Assert.Equal("worn", TyreSizeText.Read("205/65R15").OrRefuse().WornBy(QuantityText.Read(depth, Kind.Length).OrRefuse()).Refusal?.Code);

    // A mud tyre of 838 mm may have had 20 mm.
    [Fact]
    public void A_taller_tyre_has_more_to_wear()
        => Assert.Null(TyreSizeText.Read("33x12.50R15LT").OrRefuse().WornBy(QuantityText.Read("20 mm", Kind.Length).OrRefuse()).Refusal);
}
