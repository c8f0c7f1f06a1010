using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.YardCards;
using Xunit;

namespace BuildLog.Gearing.Tests.YardCards;

public sealed class AxleCardTests
{
    private static readonly WindowOfPart Wanted = new(Position.RearAxle, "axle ratio", Units.One, new(2.85, 3.21), new(2.86, 3.20), null);

    // By hand: one wheel held, ten wheel turns are 10 / 2 · i propshaft turns; both alike 10 · i.
    [Fact]
    public void Ten_wheel_turns_are_five_or_ten_times_the_ratio()
    {
        var card = AxleCard.Of(Wanted);
        Assert.Equal((14.25, 16.05), Rounded(AxleCard.Turns(card.Wanted.Window, Wheels.OneHeld)));
        Assert.Equal((28.5, 32.1), Rounded(AxleCard.Turns(card.Wanted.Window, Wheels.Together)));
    }

    [Theory]
    [InlineData(Wheels.OneHeld)]
    [InlineData(Wheels.Together)]
    public void Counting_further_narrows_what_is_neither_yes_nor_no(Wheels wheels)
    {
        var card = AxleCard.Of(Wanted);
        var (ten, thirty) = (card.Edges(wheels), card.Edges(wheels, AxleCard.MoreWheelTurns));
        Assert.True(Between(thirty, AxleCard.MoreWheelTurns) < Between(ten, AxleCard.WheelTurns) / 2);
    }

    [Fact]
    public void Names_pairs_that_are_sold_before_others_and_none_outside_the_window()
    {
        var teeth = AxleCard.Of(Wanted).Teeth;
        Assert.All(teeth, pair => Assert.InRange(pair.Ratio, 2.85, 3.21));
        Assert.Equal(new Teeth(40, 13), teeth.First(pair => Math.Abs(pair.Ratio - 3.08) < 0.005));
        Assert.All(teeth.Take(3), pair => Assert.Contains(pair, ListedRatios.Common));
        Assert.Equal(teeth.Count, teeth.Distinct().Count());
    }

    [Fact]
    public void A_card_has_room_for_twelve_pairs()
    {
        var teeth = AxleCard.Of(Wanted with { Window = new(3, 5), SureWindow = new(3, 5) }).Teeth;
        var sold = teeth.TakeWhile(ListedRatios.Common.Contains).ToList();

        Assert.Equal(12, teeth.Count);
        Assert.Equal(sold.OrderBy(pair => pair.Ratio), sold);
    }

    [Fact]
    public void Below_a_limit_alone_the_teeth_begin_at_it_and_it_is_known_that_there_are_more()
    {
        var card = AxleCard.Of(Wanted with { Window = new(double.NegativeInfinity, 4.42), SureWindow = new(double.NegativeInfinity, 4.33) });

        Assert.InRange(card.Teeth[0].Ratio, 4.2, 4.33);
        Assert.Contains(new Teeth(41, 10), card.Teeth);
        Assert.True(card.LeavesOut);
        Assert.False(AxleCard.Of(Wanted with { Window = new(3.44, 3.51), SureWindow = new(3.44, 3.51) }).LeavesOut);
    }

    // 29/12 = 2.417 lies in the window alone; counted it is never a yes, so it is none as teeth.
    [Fact]
    public void Teeth_that_would_do_lie_in_what_the_card_calls_certain_and_the_others_stand_apart()
    {
        var card = AxleCard.Of(Wanted with { Window = new(2.41, 2.66), SureWindow = new(2.48, 2.58) });

        Assert.Equal("2.49 to 2.57", card.Wanted.SureInWords(Units.One));
        Assert.NotEmpty(card.Teeth);
        Assert.All(card.Teeth, pair => Assert.InRange(pair.Ratio, 2.485, 2.575));
        Assert.NotEmpty(card.Perhaps);
        Assert.All(card.Perhaps, pair => Assert.True(pair.Ratio is (>= 2.41 and < 2.485) or (> 2.575 and <= 2.66)));
        Assert.True(card.Teeth.Count + card.Perhaps.Count <= 12);

        var unsure = AxleCard.Of(Wanted with { Window = new(2.41, 2.66), SureWindow = null });
        Assert.Empty(unsure.Teeth);
        Assert.Contains(new Teeth(29, 12), AxleCard.Of(Wanted with { Window = new(2.41, 2.43), SureWindow = null }).Perhaps);
        Assert.NotEmpty(unsure.Perhaps);
    }

    // 39/14 = 2.7857 is sold as 2.79 and lies in what is sure, 2.780 to 2.940, told as 2.79 to 2.93; 2.7826 (64/23) and 2.9375 (47/16) do too, but are written 2.78 and 2.94.
    [Fact]
    public void Teeth_whose_written_ratio_lies_in_the_window_as_printed_would_do()
    {
        var card = AxleCard.Of(Wanted with { Window = new(2.72, 3.00), SureWindow = new(2.780, 2.940) });

        Assert.Equal("2.79 to 2.93", card.Wanted.SureInWords(Units.One));
        Assert.Contains(new Teeth(39, 14), card.Teeth);
        Assert.All(card.Teeth, pair => Assert.InRange(pair.Ratio, 2.785, 2.935));
        Assert.Contains(new Teeth(39, 14), AxleCard.Of(Wanted with { Window = new(5.44, 6.00), SureWindow = new(5.56, 5.88) }, hub: 2).Teeth);
        Assert.DoesNotContain(new Teeth(39, 14), AxleCard.Of(Wanted with { Window = new(2.72, 3.00), SureWindow = new(2.785, 2.940) }).Teeth);
    }

    // By hand, told as 3.44 to 3.51: sold 45/13; then usual numbers without a common factor by their pinion, with one, then the rest; 3.50 once, as 35/10; 55/16 = 3.4375 is written 3.44.
    [Fact]
    public void After_those_that_are_sold_come_the_likeliest_teeth_and_each_ratio_once()
        => Assert.Equal(
            ["45/13", "31/9", "38/11", "52/15", "55/16", "35/10", "59/17"],
            AxleCard.Of(Wanted with { Window = new(3.43, 3.52), SureWindow = new(3.43, 3.52) }).Teeth.Select(pair => pair.ToString()));

    // A whole ratio of 5.70 to 6.42 behind hubs of 2.00 leaves 2.85 to 3.21 to ring and pinion.
    [Fact]
    public void Behind_a_hub_reduction_the_teeth_make_what_the_hubs_leave()
    {
        var portal = AxleCard.Of(Wanted with { Window = new(5.70, 6.42), SureWindow = new(5.72, 6.40) }, hub: 2);

        Assert.NotEmpty(portal.Teeth);
        Assert.All(portal.Teeth, pair => Assert.InRange(pair.Ratio, 5.73 / 2, 6.39 / 2));
        Assert.Equal((28.5, 32.1), Rounded(AxleCard.Turns(portal.Wanted.Window, Wheels.OneHeld)));
    }

    [Fact]
    public void Two_wishes_that_exclude_each_other_make_no_card()
    {
        var empty = Wanted with
        {
            Window = new(3.4, 3.2),
            Lowest = new("cruise", "Cruise engine speed", "2500 rev/min or more", 3.4),
            Highest = new("top-speed", "Top speed", "160 km/h or more", 3.2),
        };
        var refused = Assert.Throws<RefusedException>(() => AxleCard.Of(empty));
        Assert.StartsWith("No axle can do: cruise engine speed (2500 rev/min or more) wants axle ratio 3.40 or more, top speed", refused.Message, StringComparison.Ordinal);
    }

    private static double Between(CountEdges edges, int turns) => (edges.Possible.High - edges.Possible.Low - (edges.Yes!.Value.High - edges.Yes.Value.Low)) / turns;

    private static (double Low, double High) Rounded(Window window) => (Math.Round(window.Low, 9), Math.Round(window.High, 9));
}
