using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

public sealed class TagAgainstCountTests
{
    // The rule of the command line, by its own route: a tag agrees here where it agrees there.
    [Theory]
    [InlineData("4.10")]
    [InlineData("4.11")]
    [InlineData("4.12")]
    [InlineData("4.04")]
    [InlineData("3.90")]
    public void It_agrees_where_the_quoted_ratio_does(string tag)
    {
        var quoted = QuotedRatio.Read(tag, RatioRange.Axle).OrRefuse();
        var counted = Measured.From(4.08, new Input("count", 0.02, new Evidence("count")));

        Assert.Equal(quoted.Agrees(counted), new TagAgainstCount(new(quoted.ToMeasured("axle"), Source.Tag, tag), new(counted, Source.Measured)).Agrees);
    }

    [Fact]
    public void It_says_which_of_them_says_what()
    {
        var counted = Measured.From(4.74, new Input("count", 0.0154, new Evidence("count")));
        var tag = new Known(QuotedRatio.Read("3.90", RatioRange.Axle).OrRefuse().ToMeasured("axle"), Source.Tag, "3.90");

        Assert.Equal("The tag's 3.90 does not agree with 4.74 ± 0.04 (measured).", new TagAgainstCount(tag, new(counted, Source.Measured)).Says);
        Assert.Equal("The claimed 3.90 does not agree with 4.74 ± 0.04 (measured).", new TagAgainstCount(tag with { Source = Source.OwnersWord }, new(counted, Source.Measured)).Says);
    }

    // The hub stands in both, so its last digit drops out of the difference but for what the ratios differ by.
    [Fact]
    public void A_hub_in_both_cancels()
    {
        var hub = Measured.From(2, new Input("hub", 0.01, new Evidence("hub")));
        var pair = new TagAgainstCount(new(4.10 * hub, Source.Tag), new(4.1 * hub, Source.TeethCounted));

        Assert.Equal(0, pair.Difference.StandardUncertainty);
    }

    // 4.10 beside 4.09 ± 0.04; and a number without words of its own is said as a number.
    [Fact]
    public void It_says_that_a_tag_agrees_and_a_tag_without_words_by_its_number()
    {
        var counted = new Known(Measured.From(4.09, new Input("count", 0.0154, new Evidence("count"))), Source.Measured);

        Assert.Equal("The tag's 4.10 agrees with 4.09 ± 0.04 (measured).", new TagAgainstCount(new(4.10, Source.Tag, "4.10"), counted).Says);
        Assert.StartsWith("The maker's 4.10 agrees", new TagAgainstCount(new(4.1, Source.MakersData), counted).Says, StringComparison.Ordinal);
    }
}
