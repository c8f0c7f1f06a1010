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

    // Of a text that is read in pieces a person knows where to look only by the text or a piece of it.
    [Theory]
    [InlineData("That is no number.", "3:x", "'3:x': that is no number.")]
    [InlineData("'x' is no number.", "3:x", "'x' is no number.")]
    [InlineData("A number, not 'x'.", "3:x", "A number, not 'x'.")]
    [InlineData("No number ('x').", "3:x", "No number ('x').")]
    [InlineData("That is no number.", "  ", "That is no number.")]
    public void A_refusal_names_the_whole_text_unless_it_names_a_piece(string message, string whole, string expected)
    {
        Parsed<double> read = No with { Message = message };

        Assert.Equal(expected, read.In(whole).Refusal!.Message);
        Assert.Equal((No.Code, No.Example), (read.In(whole).Refusal!.Code, read.In(whole).Refusal!.Example));
    }

    [Fact]
    public void What_was_understood_needs_no_naming()
    {
        Parsed<double> read = 4.1;

        Assert.Equal(4.1, read.In("4.1").OrRefuse());
    }

    [Fact]
    public void What_is_refused_while_it_is_made_is_refused_alike_and_any_other_fault_is_not_hidden()
    {
        Assert.Same(No, Parsed.From<double>(() => throw new RefusedException(No)).Refusal);
        Assert.Equal(4.1, Parsed.From(() => 4.1).OrRefuse());
        Assert.Throws<InvalidOperationException>(() => Parsed.From<double>(() => throw new InvalidOperationException("a fault")));
    }
}
