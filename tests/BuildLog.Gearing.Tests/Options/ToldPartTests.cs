using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

public sealed class ToldPartTests
{
    // 3.36 is rounded: ±0.005 rectangular; 37/11 is exact.
    [Theory]
    [InlineData("3.36", 3.36, 0.0028868)]
    [InlineData("37/11", 3.3636364, 0)]
    public void An_axle_is_as_sure_as_its_claim(string text, double ratio, double u)
    {
        var axle = ToldPart.Axle(text, "offer", InventedCar.Plain.RearAxle).OrRefuse();

        Assert.Equal(ratio, axle.Ratio!.Value.Value, 1e-6);
        Assert.Equal(u, axle.Ratio.Value.StandardUncertainty, 1e-6);
    }

    [Fact]
    public void One_ratio_alone_is_the_top_gear_of_the_box_that_is_fitted()
        => Assert.Equal([3.5, 2.1, 1.4, 0.82], ToldPart.Gearbox("0.82", "what if", InventedCar.Plain.Transmission).OrRefuse().Gears.Select(gear => gear.Ratio.Value.Value));

    [Fact]
    public void All_gears_make_a_box_of_their_own()
        => Assert.Equal(5, ToldPart.Gearbox("3.32 2.05 1.38 1.00 0.81", "box", InventedCar.Plain.Transmission).OrRefuse().Gears.Count);

    // UN R30: 15 in are 381 mm, and twice 65 % of 205 mm: 647.5 mm across.
    [Fact]
    public void Tyres_are_told_by_size_or_by_circumference()
    {
        Assert.Equal(2.05, ToldPart.Tyres("2.05 m", "set", null).OrRefuse().RollingCircumference!.Value.Value, 1e-9);
        Assert.InRange(ToldPart.Tyres("205/65R15", "set", null).OrRefuse().RollingCircumference!.Value.Value, 0.94 * Math.PI * 0.6475, Math.PI * 0.6475);
    }

    [Theory]
    [InlineData("0.8 m", true)]
    [InlineData("6 m", true)]
    [InlineData("0.79 m", false)]
    [InlineData("6.01 m", false)]
    public void The_ends_of_a_circumference_belong_to_it(string text, bool can) => Assert.Equal(can, ToldPart.Tyres(text, "set", null).Refusal is null);

    // What the words leave open is the fitted part's; what they say, and what no longer holds, is not.
    [Fact]
    public void A_told_part_is_the_fitted_one_but_for_what_is_told()
    {
        var axle = InventedCar.Axle(4.1) with { HubFaces = InventedCar.Exactly(1.5), Quoted = InventedCar.Exactly(3.9) };
        var tyres = InventedCar.Rolling(2) with { LoadedRadius = InventedCar.Exactly(0.3), FrontPair = InventedCar.Rolling(1.9), TwinRear = true };
        var told = ToldPart.Axle("3.36", "offer", axle).OrRefuse();
        var set = ToldPart.Tyres("2.05 m", "set", tyres).OrRefuse();

        Assert.Equal(("offer", 1.5, null), (told.Name, told.HubFaces!.Value.Value, told.Quoted));
        Assert.Equal(("set", null, null, true), (set.Name, set.LoadedRadius, set.FrontPair, set.TwinRear));
        Assert.Equal("offer", ToldPart.Axle("3.36", "offer", null).OrRefuse().Name);
    }

    // Nobody knows what another box has at its ends; a top gear alone is a change of the one that is fitted.
    [Fact]
    public void All_gears_told_are_another_box_whose_ends_nobody_knows()
    {
        var fitted = InventedCar.Plain.Transmission! with { Output = "25 spline", Front = new() { BellHousing = "small" } };

        Assert.Null(ToldPart.Gearbox("3.32 2.05 1.38 1.00 0.81", "box", fitted).OrRefuse().Output);
        Assert.Null(ToldPart.Gearbox("3.32 2.05 1.38 1.00 0.81", "box", fitted).OrRefuse().Front?.BellHousing);
        Assert.Equal("25 spline", ToldPart.Gearbox("0.82", "box", fitted).OrRefuse().Output);
    }

    // Who told less of it would have the better offer.
    [Fact]
    public void An_offered_box_is_another_one_though_only_its_top_gear_is_told()
    {
        var fitted = InventedCar.Plain.Transmission! with { Output = "25 spline", Front = new() { BellHousing = "small" } };

        Assert.Null(ToldPart.Gearbox(Claim.Read("0.82"), "box", fitted).OrRefuse().Output);
        Assert.Null(ToldPart.Gearbox(Claim.Read("0.82; counted 0.820±0.003"), "box", fitted).OrRefuse().Front?.BellHousing);
    }

    [Theory]
    [InlineData("3.36", "3.36", "", "3.36")]
    [InlineData("3.36; counted 3.350±0.027", "3.36", "3.350±0.027", "3.36; counted 3.350±0.027")]
    [InlineData("counted 3.350±0.027", "", "3.350±0.027", "counted 3.350±0.027")]
    [InlineData(" 3.350±0.027 ", "3.350±0.027", "", "3.350±0.027")]
    [InlineData("", "", "", "")]
    public void A_claim_keeps_what_is_said_beside_what_was_counted(string text, string said, string counted, string again)
    {
        var claim = Claim.Read(text);

        Assert.Equal((said, counted, again), (claim.Said, claim.Counted, claim.ToString()));
        Assert.Equal(counted.Length > 0 ? counted : said, claim.Decides);
    }

    [Fact]
    public void A_count_decides_and_what_the_seller_said_stays_beside_it()
    {
        var axle = ToldPart.Axle(Claim.Read("3.36; counted 4.100±0.027"), "offer", InventedCar.Plain.RearAxle).OrRefuse();
        var box = ToldPart.Gearbox(Claim.Read("3.32 2.05 1.38 1.00 0.81; counted 0.700±0.010"), "offer", InventedCar.Plain.Transmission).OrRefuse();
        Assert.Equal(0.81, box.Top!.Quoted!.Value.Value);
        var set = ToldPart.Tyres(Claim.Read("205/65R15; counted 2.000±0.010 m"), "offer", null).OrRefuse();

        Assert.Equal((4.1, Source.Measured, 3.36), (axle.Ratio!.Value.Value, axle.Ratio.Source, axle.Quoted!.Value.Value));
        Assert.Equal([3.32, 2.05, 1.38, 1.00, 0.70], box.Gears.Select(gear => gear.Ratio.Value.Value));
        Assert.Equal((2.0, "205/65R15"), (set.RollingCircumference!.Value.Value, set.Size!.Designation));
    }

    // What a word alone says is somebody's word, and nobody says anything beside it.
    [Fact]
    public void A_word_alone_is_a_word_and_a_count_is_measured()
    {
        var (axle, unit, set) = (ToldPart.Axle(Claim.Read("3.36"), "offer", null).OrRefuse(), ToldPart.Overdrive(Claim.Read("0.78"), "offer").OrRefuse(), ToldPart.Tyres(Claim.Read("2.05 m"), "offer", null).OrRefuse());
        var counted = ToldPart.Overdrive(Claim.Read("0.78; counted 0.800±0.005"), "offer").OrRefuse();

        Assert.All([axle.Ratio!, unit.Ratio!, set.RollingCircumference!], known => Assert.Equal(Source.OwnersWord, known.Source));
        Assert.Equal((null, null), (axle.Quoted, unit.Quoted));
        Assert.Equal((0.8, Source.Measured, 0.78), (counted.Ratio!.Value.Value, counted.Ratio.Source, counted.Quoted!.Value.Value));
    }

    [Fact]
    public void A_size_that_was_read_decides_over_the_one_that_is_said()
        => Assert.Equal("215/65R15", ToldPart.Tyres(Claim.Read("205/65R15; counted 215/65R15"), "offer", null).OrRefuse().Size!.Designation);

    [Fact]
    public void Gears_may_stand_apart_and_another_box_keeps_the_converter()
    {
        var automatic = InventedCar.Plain.Transmission! with { Converter = new(true) };

        Assert.Equal(["3.32", "2.05", "1.38"], ToldGears.Read(" 3.32;  2.05   1.38 ").OrRefuse().Told.Select(gear => gear.Text));
        Assert.Same(automatic.Converter, ToldPart.Gearbox("3.32 2.05 1.00", "box", automatic).OrRefuse().Converter);
    }

    // What is typed as a list has it is the listed part, evidence and all; anything else is somebody's word.
    [Fact]
    public void A_listed_part_is_known_again_by_its_text()
    {
        var listed = ListedParts.Axles(InventedCar.Plain.RearAxle!);

        Assert.Equal(37.0 / 11, listed.Called("37/11")!.Ratio!.Value.Value, 1e-12);
        Assert.Equal(Source.MakersData, listed.Called(" 37/11 ")!.Ratio!.Source);
        Assert.Null(listed.Called("3.36"));
    }

    [Theory]
    [InlineData("3.32/2.05;1.38 1.00", 4)]
    [InlineData("2.05 1.00", 2)]
    public void Whatever_stands_between_gears(string text, int gears) => Assert.Equal(gears, ToldPart.Gearbox(text, "box", null).OrRefuse().Gears.Count);

    [Fact]
    public void One_ratio_is_no_gearbox_where_no_other_gear_is_known()
        => Assert.Equal("gears", ToldPart.Gearbox("0.82", "box", new("single", [InventedCar.Gear("1", 2)])).Refusal!.Code);

    [Theory]
    [InlineData("25 m")]
    [InlineData("205/65R")]
    public void Impossible_tyres_are_a_sentence(string text)
        => Assert.NotEmpty(ToldPart.Tyres(text, "set", null).Refusal!.Sentence);

    [Theory]
    [InlineData("1.00 2.05 3.32", "'2.05' cannot follow 1")]
    [InlineData("3.32 3.32 1.00", "'3.32' cannot follow 3.32")]
    [InlineData("3.32 1.00 1.38", "'1.38' cannot follow 1")]
    [InlineData("0.82", "write all its forward gears")]
    [InlineData("3.32 fast", "fast")]
    public void An_impossible_box_is_a_sentence(string text, string says)
        => Assert.Contains(says, ToldPart.Gearbox(text, "box", null).Refusal!.Sentence, StringComparison.Ordinal);
}
