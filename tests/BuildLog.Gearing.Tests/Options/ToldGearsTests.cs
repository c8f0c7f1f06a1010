using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

public sealed class ToldGearsTests
{
    private static readonly Transmission Fitted = InventedCar.Plain.Transmission!; // 3.5 2.1 1.4 1

    // A fifth gear beside four; a fourth in place of the fourth; "D" is the fourth under another name; and "low" is one more.
    [Theory]
    [InlineData("1:3.32 5:0.81", "1 2 3 4 5", "3.32 2.1 1.4 1 0.81")]
    [InlineData("4:0.9 1:3.2", "1 2 3 4", "3.2 2.1 1.4 0.9")]
    [InlineData("D:1.02", "1 2 3 D", "3.5 2.1 1.4 1.02")]
    [InlineData("low:6.1", "low 1 2 3 4", "6.1 3.5 2.1 1.4 1")]
    [InlineData("0.82", "1 2 3 4", "3.5 2.1 1.4 0.82")]
    public void What_is_told_by_name_stands_among_what_is_taken_as_fitted(string text, string names, string ratios)
    {
        var box = ToldPart.Gearbox(text, "box", Fitted).OrRefuse();

        Assert.Equal(names.Split(' '), box.Gears.Select(gear => gear.Name));
        Assert.Equal(ratios, string.Join(' ', box.Gears.Select(gear => FormattableString.Invariant($"{gear.Ratio.Value.Value}"))));
    }

    // A box on offer is another one: the fitted one's 3.5 2.1 1.4 1 say nothing of it. What its own numbers leave out it has; below a top gear without a name, or one by a word, nobody knows what.
    [Theory]
    [InlineData("counted 1:3.325±0.027 5:0.805±0.027", "3.325 0.805", "gears 2, 3 and 4", false, false)]
    [InlineData("counted 3:1.4±0.01 5:0.805±0.027", "1.4 0.805", "gears 1, 2 and 4", true, false)]
    [InlineData("1:3.3 2:2 4:1", "3.3 2 1", "gear 3", false, false)]
    [InlineData("counted 1:3.325±0.027", "3.325", "the other gears", false, true)]
    [InlineData("1:3.3 3:1.5", "3.3 1.5", "gears 2 and top", false, true)]
    [InlineData("0.82", "0.82", "the other gears", true, false)]
    [InlineData("0.82; counted 0.800±0.010", "0.8", "the other gears", true, false)]
    [InlineData("1:3.3; counted 0.800±0.010", "3.3 0.8", "the other gears", false, false)]
    [InlineData("0.82; counted 1:3.325±0.027", "3.325 0.82", "the other gears", false, false)]
    [InlineData("0.82; counted 1:3.325±0.027 5:0.7±0.01", "3.325 0.7", "gears 2, 3 and 4", false, false)]
    [InlineData("1:3.3 5:0.82; counted 0.800±0.010", "3.3 0.8", "gears 2, 3 and 4", false, false)]
    [InlineData("1:3.3 top:0.82", "3.3 0.82", "the other gears", false, false)]
    [InlineData("low:6.1", "6.1", "the other gears", false, true)]
    public void Of_a_box_on_offer_only_those_gears_are_known_that_are_told(string claim, string ratios, string untold, bool first, bool top)
    {
        var box = ToldPart.Gearbox(Claim.Read(claim), "box", Fitted).OrRefuse();

        Assert.Equal(ratios, string.Join(' ', box.Gears.Select(gear => FormattableString.Invariant($"{gear.Ratio.Value.Value}"))));
        Assert.Equal((untold, first, top), (box.Untold!.InWords, box.Untold.First, box.Untold.Top));
        Assert.Equal((first, top), (box.First is null, box.Top is null));
    }

    [Theory]
    [InlineData("3.32 2.05 1.38 1.00 0.81")]
    [InlineData("3.32 2.05 1.38 1.00 0.81; counted 1:3.600±0.030 5:0.805±0.009")]
    [InlineData("1:3.3 2:2 3:1.4 4:1")]
    [InlineData("low:6.1 1:3.3 2:2 3:1.4 4:1")]
    public void Where_all_are_told_none_is_left(string claim) => Assert.Null(ToldPart.Gearbox(Claim.Read(claim), "box", Fitted).OrRefuse().Untold);

    // What the seller says of the top gear stays beside its count, by whatever name.
    [Theory]
    [InlineData("0.82; counted 0.800±0.010")]
    [InlineData("0.82; counted 1:3.325±0.027 5:0.8±0.01")]
    [InlineData("1:3.3 5:0.82; counted 0.800±0.010")]
    public void The_top_gear_keeps_what_was_said_of_it(string claim)
        => Assert.Equal((0.8, 0.82), ToldPart.Gearbox(Claim.Read(claim), "box", null).OrRefuse().Top is { } top ? (top.Ratio.Value.Value, top.Quoted!.Value.Value) : default);

    [Fact]
    public void Only_the_gears_that_were_counted_are_measured_and_each_keeps_what_was_said_of_it()
    {
        var box = ToldPart.Gearbox(Claim.Read("3.32 2.05 1.38 1.00 0.81; counted 1:3.600±0.030 5:0.805±0.009"), "box", Fitted).OrRefuse();

        Assert.Equal([3.6, 2.05, 1.38, 1, 0.805], box.Gears.Select(gear => gear.Ratio.Value.Value));
        Assert.Equal([Source.Measured, Source.OwnersWord, Source.OwnersWord, Source.OwnersWord, Source.Measured], box.Gears.Select(gear => gear.Ratio.Source));
        Assert.Equal([3.32, null, null, null, 0.81], box.Gears.Select(gear => gear.Quoted?.Value.Value));
    }

    // 3.32 alone is no top gear; 0.81 is one by itself or by its name.
    [Theory]
    [InlineData("0.81", 0.81)]
    [InlineData("1:3.32 5:0.81", 0.81)]
    [InlineData("3.32 2.05 1.00", 1.00)]
    [InlineData("1:3.32", null)]
    public void A_top_gear_is_told_or_not(string text, double? top) => Assert.Equal(top, ToldGears.Read(text).OrRefuse().Top?.Ratio.Value);

    [Theory]
    [InlineData("", "tells no gear")]
    [InlineData("1:3.32 0.81", "Which gear is '0.81'? Name each of them, or none.")]
    [InlineData("1:0.81 5:3.32", "Gear 1 cannot be longer than gear 5: '0.81' and '3.32'.")]
    [InlineData("99:2.95 crawler:0.725 1:0.3", "Gear 1 cannot be longer than gear 99: '0.3' and '2.95'.")]
    [InlineData("1.00 3.32", "'3.32' cannot follow 1")]
    [InlineData("1:3.32 5:abc", "abc")]
    [InlineData("1:3.32 5:", "'5:' tells no gear")]
    public void What_makes_no_gears_is_a_sentence(string text, string sentence) => Assert.Contains(sentence, ToldGears.Read(text).Refusal!.Message, StringComparison.Ordinal);

    // Strictly falling, so that nothing but their number is wrong with the last of them.
    [Theory]
    [InlineData(40, null)]
    [InlineData(41, "tells more gears than a gearbox has")]
    public void There_is_an_end_to_the_gears_of_a_box(int count, string? sentence)
    {
        var refused = ToldGears.Read(string.Join(' ', Enumerable.Range(0, count).Select(k => FormattableString.Invariant($"{5 - (k * 0.1):0.0}")))).Refusal?.Message;

        if (sentence is null) Assert.Null(refused);
        else Assert.Contains(sentence, refused, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gear_is_written_as_it_is_read()
    {
        var told = new ToldGear("over drive", "0.81", 0.81);

        Assert.Equal("overdrive:0.81", told.ToString());
        Assert.True(told.IsCalled("OverDrive"));
        Assert.Equal("0.81", (told with { Name = "" }).ToString());
    }
}
