using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Gearing.Tests.Quantities;

/// <summary>A sentence is worded once and read in the units of whoever reads it.</summary>
public sealed class SentenceTests
{
    // 100 km/h = 62.137 mph, by the mile's definition.
    private static readonly SaidNumber Speed = new(Units.KilometrePerHour, unit => Rounded.WithUnit(Rounded.Fixed(unit.FromBase(100 / 3.6), 0), unit));

    private static Unit InMiles(Unit unit) => unit == Units.KilometrePerHour ? Units.MilePerHour : unit;

    [Fact]
    public void Its_numbers_follow_the_units_and_its_words_stay()
    {
        Sentence sentence = $"At {Speed} gear {4} is in.";

        Assert.Equal("At 100 km/h gear 4 is in.", sentence.ToString());
        Assert.Equal("At 62 mph gear 4 is in.", sentence.In(InMiles));
    }

    [Fact]
    public void So_do_those_of_a_sentence_inside_it()
    {
        Sentence clause = $"; at {Speed} it hums";
        Sentence sentence = $"It runs{clause}" + $" and {0.5:0.00} m shakes.";

        Assert.Equal("It runs; at 62 mph it hums and 0.50 m shakes.", sentence.In(InMiles));
    }

    [Fact]
    public void A_plain_text_is_a_sentence()
    {
        Sentence sentence = "No goal is set.";

        Assert.Equal("No goal is set.", sentence.In(InMiles));
    }
}
