using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.YardCards;
using BuildLog.Tui.YardCards;

namespace BuildLog.Tui.Tests.YardCards;

public sealed class GearboxCardWordsTests
{
    // Ten turns are read to a quarter, 0.025 of a ratio, and a chalk mark takes as much again: a window of 0.008 needs many more.
    [Theory]
    [InlineData(0.60, 0.80, 2)]
    [InlineData(0.703, 0.711, 3)]
    public void A_gear_that_twenty_turns_cannot_tell_is_counted_until_some_count_means_yes(double low, double high, int rows)
    {
        var gear = new WindowOfPart(Position.Transmission, "ratio of top (4)", Units.One, new(low, high), new(low, high), null);

        var ranges = Assert.Single(GearboxCardWords.Ways(GearboxCard.Of([gear]))).Ranges;

        Assert.Equal(rows, ranges.Count);
        Assert.NotNull(ranges[^1].Yes);
        Assert.All(ranges, range => Assert.StartsWith("under ", range.No, StringComparison.Ordinal));
        Assert.Equal(rows == 3, ranges[1].Yes is null);
    }

    [Fact]
    public void Where_no_value_is_sure_no_count_is()
    {
        var gear = new WindowOfPart(Position.Overdrive, "overdrive ratio", Units.One, new(0.7, 0.8), null, "roll the tyres out");

        Assert.Null(GearboxCardWords.TurnsToAYes(gear));
        Assert.Equal(2, Assert.Single(GearboxCardWords.Ways(GearboxCard.Of([gear]))).Ranges.Count);
    }
}
