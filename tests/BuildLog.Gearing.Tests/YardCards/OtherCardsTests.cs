using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.YardCards;
using Xunit;

namespace BuildLog.Gearing.Tests.YardCards;

/// <summary>The cards for a gearbox and for tyres.</summary>
public sealed class OtherCardsTests
{
    // By hand: ten output turns of a gear of 0.80 are 8 input turns; a quarter turn read is ±1/8, u = 0.072, so that 95 % are ±0.14.
    [Fact]
    public void A_gear_is_counted_at_the_input()
    {
        var edges = GearboxCard.Of(Wanted(Position.Transmission, 0.78, 0.82)).Edges();

        Assert.InRange(edges.Possible.Low, 7.8 - 0.32, 7.8 - 0.13);
        Assert.InRange(edges.Possible.High, 8.2 + 0.13, 8.2 + 0.32);
        Assert.InRange(edges.Yes!.Value.Low, 7.8 + 0.13, 8.2);
    }

    // By hand: radial tyres cover 0.971 of what they cover unloaded, u 1 %: three turns of 2.00 to 2.20 m under load are 6.179 to 6.797 m, give or take 2 %.
    [Fact]
    public void A_loose_wheel_covers_more_than_it_does_under_load()
    {
        var edges = TyreCard.Of(Wanted(Position.Tyres, 2.00, 2.20), null).Loose();

        Assert.Equal(6.179 * (1 - 0.0202), edges.Possible.Low, 0.005);
        Assert.Equal(6.797 * (1 + 0.0202), edges.Possible.High, 0.005);
        Assert.Equal(6.179 * (1 + 0.0202), edges.Yes!.Value.Low, 0.005);
    }

    [Fact]
    public void Wishes_that_exclude_each_other_make_no_card()
    {
        var empty = Wanted(Position.Tyres, 2.2, 2.0) with { Lowest = new("cruise", "Cruise", "2400 rev/min", 2.2), Highest = new("tyre-diameter", "Tyre diameter", "at most 700 mm", 2.0) };

        Assert.Contains("they exclude each other by", Assert.Throws<RefusedException>(() => TyreCard.Of(empty, null)).Message, StringComparison.Ordinal);
    }

    private static WindowOfPart Wanted(Position position, double low, double high)
        => new(position, "ratio of top (5)", position == Position.Tyres ? Units.Metre : Units.One, new Window(low, high), new Window(low, high), null);
}
