using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: inner yokes in one plane, an industrial shaft maker's catalogue.</remarks>
public sealed class PhasingCheckTests
{
    [Fact]
    public void Yokes_in_line_fit() => Assert.Equal(Verdict.Fits, Find(Yokes.InLine).Verdict);

    // 3° and 3° add up to √18 = 4.24°, and tan·sin of that is 0.55 %.
    [Fact]
    public void A_quarter_turn_clashes_with_what_it_does()
    {
        var finding = Find(Yokes.QuarterTurn);

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.Equal("The yokes of the propshaft are a quarter turn apart: its joints add up to one of 4.2°, and the end it drives swings by 0.5 % of its speed twice a turn.", finding.Says);
        Assert.NotEmpty(finding.Cures);
    }

    // β² + β² leave 2 β² ω²: 300 rad/s² at 2.23° and 400 at 2.58°, both at 3000 rev/min.
    [Theory]
    [InlineData(2.0, Verdict.Fits)]
    [InlineData(2.4, Verdict.Watch)]
    [InlineData(2.7, Verdict.Clash)]
    public void It_is_no_worse_than_the_shake_it_leaves(double angle, Verdict verdict)
    {
        var car = InventedShaft.Car(3000, new("shaft", new ShaftPiece(yokes: Yokes.QuarterTurn)) { Line = InventedShaft.Line(3, 3 + angle, 3) });

        Assert.Equal([verdict, verdict], [Assert.Single(new PhasingCheck().Look(car, OwnersGoals.None)).Verdict, Assert.Single(new TorsionalCheck().Look(car, OwnersGoals.None)).Verdict]);
    }

    [Fact]
    public void Where_no_angle_is_measured_it_clashes_as_it_stands()
        => Assert.Equal(Verdict.Clash, Assert.Single(new PhasingCheck().Look(InventedShaft.Car(3000, new("shaft", new ShaftPiece(yokes: Yokes.QuarterTurn))), OwnersGoals.None)).Verdict);

    [Fact]
    public void Yokes_nobody_looked_at_are_asked_for() => Assert.Equal(Verdict.Open, Find(null).Verdict);

    [Fact]
    public void Each_piece_is_judged()
        => Assert.Equal([Verdict.Fits, Verdict.Open], new PhasingCheck().Look(
            InventedShaft.Car(3000, new("two-piece", new ShaftPiece(yokes: Yokes.InLine), new ShaftPiece())), OwnersGoals.None).Select(finding => finding.Verdict));

    private static Finding Find(Yokes? yokes)
        => Assert.Single(new PhasingCheck().Look(InventedShaft.Car(3000, new("shaft", new ShaftPiece(yokes: yokes)) { Line = InventedShaft.Line(3, 6, 3) }), OwnersGoals.None));
}
