using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// The invented shaft's critical speed is 5393.67 rev/min (worked example E2); 65 % are 3505.9, 75 % 4045.3.
/// Source of the limit: 0.65 of the critical speed, common practice, no source; 0.75, a propshaft maker's page; the constant from memory.
/// </remarks>
public sealed class PropshaftSpeedCheckTests
{
    [Theory]
    [InlineData(3500, Verdict.Fits)]
    [InlineData(3800, Verdict.Watch)]
    [InlineData(4100, Verdict.Clash)]
    public void The_redline_in_direct_top_decides(double redline, Verdict verdict) => Assert.Equal(verdict, Find(InventedShaft.Car(redline)).Verdict);

    // By hand: L² shrinks by 0.65 · 5393.67 / 4100 = 0.85509: 1524 · 0.92471 = 1409 mm. s² grows by 1/0.85509² : √(D² + d²) = 4.1273 in / 0.85509 = 4.8268 in,
    // D = 0.083 + √(4.8268²/2 − 0.083²) = 3.4951 in = 88.8 mm.
    [Fact]
    public void A_clash_names_the_length_and_the_tube_that_would_do()
    {
        var finding = Find(InventedShaft.Car(4100));

        Assert.Equal("The propshaft turns 4100 rev/min at the redline in 4, 76 % of its critical 5390 ± 130 rev/min; wanted 65 % or less.", finding.Says);
        Assert.Equal(["1408 mm or less between joint centres; a centre bearing divides a shaft", "a tube of 88.9 mm or more across with the same wall"], finding.Cures);
        Assert.Equal([Position.Propshaft, Position.RearAxle], finding.Between);
    }

    // As above with 8000 rev/min: s = 4.1273 in · 8000 / 3505.9 = 9.418 in, a tube of 6.7 in.
    [Fact]
    public void A_tube_that_nobody_makes_is_no_cure()
        => Assert.EndsWith("a centre bearing divides a shaft", Assert.Single(Find(InventedShaft.Car(8000)).Cures), StringComparison.Ordinal);

    // 100 km/h · 4.10 / 2.00 m = 56.94 rev/s = 3417 rev/min would fit, but the redline turns it faster.
    [Fact]
    public void A_modest_wish_makes_no_clash_a_fit()
        => Assert.Equal(Verdict.Clash, Find(InventedShaft.Car(5000), Wanted("100 km/h")).Verdict);

    // 140 km/h: 38.89 · 4.10 / 2.00 = 79.7 rev/s = 4783 rev/min, over 4045 already.
    [Fact]
    public void A_wish_alone_may_clash_and_never_fits()
    {
        var unknown = InventedShaft.Car(5000) with { Engine = null };
        var fits = Find(unknown, Wanted("100 km/h"));

        Assert.Equal((Verdict.Open, Because.MissingInput), (fits.Verdict, fits.Because));
        Assert.Contains(" at the 100 km/h wanted, 63 % of its critical ", fits.Says, StringComparison.Ordinal);
        Assert.EndsWith(" It may be faster; how much is not known.", fits.Says, StringComparison.Ordinal);
        Assert.Equal(["enter the engine's redline"], fits.Cures);
        Assert.Equal(Verdict.Clash, Find(unknown, Wanted("140 km/h")).Verdict);
    }

    [Fact]
    public void Of_two_pieces_the_one_that_whips_first_is_named()
    {
        Propshaft two = new("two-piece", new ShaftPiece(InventedShaft.Piece.Outer, InventedShaft.Piece.Wall, InventedShaft.Known(0.7)), InventedShaft.Piece);

        Assert.StartsWith("Piece 2 of the propshaft turns", Find(InventedShaft.Car(4100, two)).Says, StringComparison.Ordinal);
    }

    // 65 % is 3506 rev/min: a length to 1 % makes the share good to 2 %, so 3450 is a watch, and the tape is what to better.
    [Fact]
    public void A_length_that_is_not_known_well_enough_is_what_settles_it()
    {
        ShaftPiece piece = new(InventedShaft.Piece.Outer, InventedShaft.Piece.Wall, InventedShaft.Known(InventedCar.Of(1.524, 0.01524, "length", _ => "measure the shaft again")));
        var finding = Find(InventedShaft.Car(3450, new("shaft", piece)));

        Assert.Equal((Verdict.Watch, Because.Uncertainty), (finding.Verdict, finding.Because));
        Assert.StartsWith("measure the shaft again", finding.SettledBy, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_missing_is_named_with_the_way_to_get_it()
    {
        var finding = Find(InventedShaft.Car(4000, new("shaft", new ShaftPiece())) with { Engine = null });

        Assert.Equal((Verdict.Open, Because.MissingInput), (finding.Verdict, finding.Because));
        Assert.Equal(4, finding.Cures.Count);
        Assert.Contains("the wall of the propshaft is not known", finding.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_propshaft_there_is_nothing_to_say() => Assert.Empty(new PropshaftSpeedCheck().Look(InventedCar.Plain, OwnersGoals.None));

    private static OwnersGoals Wanted(string top) => OwnersGoals.None with { TopSpeed = TopSpeedGoal.Read(top).OrRefuse() };

    private static Finding Find(Driveline car, OwnersGoals? goals = null) => Assert.Single(new PropshaftSpeedCheck().Look(car, goals ?? OwnersGoals.None));
}
