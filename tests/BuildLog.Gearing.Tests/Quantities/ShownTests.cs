using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Gearing.Tests.Quantities;

public sealed class ShownTests
{
    // Forty signs stay whole; of forty-one the last gives way.
    [Fact]
    public void A_long_text_is_cut_after_forty_signs_and_says_so()
    {
        Assert.Equal(new string('x', 40), Shown.Cut(new string('x', 40)));
        Assert.Equal(new string('x', 40) + "…", Shown.Cut(new string('x', 41)));
    }

    [Theory]
    [InlineData("  27 in ", "'27 in'")]
    [InlineData("27\nin", "'27 in'")]
    [InlineData("27\tin", "'27 in'")]
    [InlineData("27\u0007in", "'27\ufffdin'")]
    [InlineData("27\u202ein", "'27\ufffdin'")]
    [InlineData("27\u2028in", "'27 in'")]
    [InlineData("½ – è", "'½ – è'")]
    public void Typed_text_is_repeated_on_one_line_and_printable(string text, string expected) => Assert.Equal(expected, Shown.Quoted(text));
}
