using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Gearing.Tests.Quantities;

public sealed class ParsedTests
{
    private static readonly Refusal No = new("no", "That is no number.", "4.10");

    [Fact]
    public void What_was_understood_is_handed_on()
    {
        Parsed<double> read = 4.1;

        Assert.True(read.Understood(out var value));
        Assert.Equal(4.1, value);
        Assert.Equal(8.2, read.Then<double>(number => 2 * number).OrRefuse());
    }

    [Fact]
    public void A_refusal_stops_what_follows_and_keeps_its_sentence()
    {
        Parsed<double> read = No;

        Assert.False(read.Understood(out _));
        Assert.Same(No, read.Then<double>(_ => throw new InvalidOperationException("must not run")).Refusal);
        Assert.Same(No, Assert.Throws<RefusedException>(() => read.OrRefuse()).Refusal);
    }

    [Theory]
    [InlineData("4.10", "That is no number. Example: 4.10")]
    [InlineData("", "That is no number.")]
    public void The_sentence_ends_with_the_example_where_there_is_one(string example, string expected)
        => Assert.Equal(expected, (No with { Example = example }).Sentence);
}
