using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// Half of 5393.67 rev/min ± 8 % is 2481.1 to 2912.6; the shaft turns v · 4.10 / 2.00 m: 72.6 to 85.3 km/h.
/// Source of the limit: 8 % around half the critical speed, a propshaft maker's page.
/// </remarks>
public sealed class HalfCriticalCheckTests
{
    [Theory]
    [InlineData("72 km/h", Verdict.Fits)]
    [InlineData("73 km/h", Verdict.Watch)]
    [InlineData("85 km/h", Verdict.Watch)]
    [InlineData("86 km/h", Verdict.Fits)]
    public void Inside_the_band_it_hums(string speed, Verdict verdict) => Assert.Equal(verdict, Find(speed).Verdict);

    // Axles: 4.10 · 2481.1 / n and 4.10 · 2912.6 / n at 80 km/h (n = 2733.3): 3.7217 and 4.3689.
    [Fact]
    public void The_speeds_and_the_axles_that_would_do_are_named()
        => Assert.Equal(["cruise at 72 km/h or less, or at 86 km/h or more", "axle ratio 3.71 or less, or 4.38 or more"], Find("80 km/h").Cures);

    // Either side of the band does, so a search for an axle that meets every goal is not held to one of them.
    [Fact]
    public void It_narrows_no_window() => Assert.Empty(Find("80 km/h").Windows);

    // 0.65 of 5393.67 rev/min is 3505.9, reached at 102.6 km/h.
    [Fact]
    public void Where_it_comes_close_to_whipping_the_check_of_its_speed_speaks()
    {
        Assert.Equal(Verdict.Fits, Find("102 km/h").Verdict);
        Assert.Empty(new HalfCriticalCheck().Look(InventedShaft.Car(5000), new([InventedCar.Goal("103 km/h", "2700")])));
    }

    // 45 in of the same tube whip at 5393.67 · (60/45)² = 9588.7 rev/min; at 80 km/h the shaft's 2733 are half of what the long piece bears.
    [Theory]
    [InlineData(0, 1, "piece 1 of the propshaft")]
    [InlineData(1, 0, "piece 2 of the propshaft")]
    public void Of_two_pieces_the_one_nearest_to_half_is_told(int first, int second, string named)
    {
        ShaftPiece[] pieces = [InventedShaft.Piece, new(InventedShaft.Piece.Outer, InventedShaft.Piece.Wall, InventedShaft.Known(45 * 0.0254))];
        var finding = Assert.Single(new HalfCriticalCheck().Look(InventedShaft.Car(5000, new("shaft", pieces[first], pieces[second])), new([InventedCar.Goal("80 km/h", "2700")])));

        Assert.StartsWith($"At 80 km/h {named} turns 2733 rev/min, 51 % of its critical", finding.Says, StringComparison.Ordinal);
        Assert.Empty(new HalfCriticalCheck().Look(InventedShaft.Car(5000, new("shaft", pieces[first], new ShaftPiece())), new([InventedCar.Goal("80 km/h", "2700")])));
    }

    // The side that is nearer is the one to get to: 0.46 from below half, 0.54 from above.
    [Theory]
    [InlineData("77 km/h", double.NegativeInfinity, 0.46)]
    [InlineData("80 km/h", 0.54, double.PositiveInfinity)]
    public void The_nearer_side_of_the_band_is_wanted(string speed, double low, double high)
    {
        var wanted = Find(speed).Wanted!.Value;

        Assert.Equal((low, high), (Math.Round(wanted.Low, 9), Math.Round(wanted.High, 9)));
    }

    // ± 2 % of a tyre at 72 km/h: 0.456 may be 0.465.
    [Fact]
    public void A_tyre_not_known_well_enough_may_be_in_the_band()
    {
        var car = InventedShaft.Car(5000) with { Tyres = InventedCar.Rolling(InventedCar.Of(2, 0.02, "tyre", _ => "roll it out")) };
        var finding = Assert.Single(new HalfCriticalCheck().Look(car, new([InventedCar.Goal("72 km/h", "2700")])));

        Assert.Equal((Verdict.Watch, Because.Uncertainty), (finding.Verdict, finding.Because));
    }

    [Fact]
    public void It_warns_and_never_clashes() => Assert.Equal((Verdict.Watch, Because.UnverifiedLimit), (Find("79 km/h").Verdict, Find("79 km/h").Because));

    [Fact]
    public void Without_a_cruise_goal_or_a_tube_there_is_nothing_to_say()
    {
        Assert.Empty(new HalfCriticalCheck().Look(InventedShaft.Car(5000), OwnersGoals.None));
        Assert.Empty(new HalfCriticalCheck().Look(InventedShaft.Car(5000, new("shaft", new ShaftPiece())), new([InventedCar.Goal("80 km/h", "2700")])));
    }

    private static Finding Find(string speed) => Assert.Single(new HalfCriticalCheck().Look(InventedShaft.Car(5000), new([InventedCar.Goal(speed, "2700")])));
}
