using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>At 3000 rev/min: 5° and 4° leave 270.6 rad/s², 6° and 5° 330.7 (worked examples E4); 7° and 5° 721.5.</remarks>
public sealed class TorsionalCheckTests
{
    [Theory]
    [InlineData(5, 4, Verdict.Fits)]
    [InlineData(6, 5, Verdict.Watch)]
    [InlineData(7, 5, Verdict.Clash)]
    [InlineData(3, 3, Verdict.Fits)]
    public void What_two_joints_leave(double front, double rear, Verdict verdict) => Assert.Equal(verdict, Find(front, rear).Verdict);

    // 1.2° apart, but only 3 and 1.8: 172 rad/s².
    [Fact]
    public void Ends_more_than_a_degree_apart_are_a_watch_however_little_they_shake()
        => Assert.Equal((Verdict.Watch, Because.UnverifiedLimit), (Find(3, 1.8).Verdict, Find(3, 1.8).Because));

    // By hand at 3000 rev/min, first joint 7°: 300/ω² = 3.0396e-3 rad² = 9.978 square degrees; √(49 − 9.978) = 6.247, √(49 + 9.978) = 7.680.
    [Fact]
    public void The_rear_angle_that_would_do_is_named()
        => Assert.Equal(["a rear joint angle of 6.3 to 7.6°: turn the pinion, or raise or lower the gearbox's mount"], Find(7, 5).Cures);

    // The page turned by 45°: side and plan are alike, and so is what would do. A rear joint that lies straight is opened in the side view.
    [Fact]
    public void The_rear_angle_is_named_in_the_plane_the_joints_work_in()
    {
        var line = new[] { 3.0, 10, 5 }.Select(slope => new Inclination(Turned(slope), Turned(slope))).ToArray();

        Assert.Equal(Find(7, 5).Cures, Find(InventedShaft.Plain with { Line = line }).Cures);
        Assert.Equal(Find(7, 5).Cures, Find(7, 0).Cures);

        static Gearing.Measurements.Known Turned(double slope) => InventedShaft.Known(slope / Math.Sqrt(2) * InventedShaft.Degree);
    }

    // 3° and 3° a quarter turn apart: 18 square degrees · ω² = 541 rad/s².
    [Fact]
    public void Yokes_out_of_line_are_cured_by_the_yokes()
    {
        Propshaft turned = new("shaft", Piece(Yokes.QuarterTurn)) { Line = InventedShaft.Line(3, 6, 3) };
        var finding = Find(turned);

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.Equal(541, finding.Value!.Value, 0.5);
        Assert.Equal(["yokes in line on every piece of the shaft"], finding.Cures);
    }

    // 7° and 1° in line still leave 49 − 1 = 48 square degrees, and 9.978 are good.
    [Fact]
    public void Where_the_yokes_alone_do_not_do_it_the_angle_is_named_too()
        => Assert.Equal(
            ["yokes in line on every piece of the shaft, and a rear joint angle of 6.3 to 7.6°: turn the pinion, or raise or lower the gearbox's mount"],
            Find(new("shaft", Piece(Yokes.QuarterTurn)) { Line = InventedShaft.Line(3, 10, 9) }).Cures);

    // Two pieces, 8°, 2° and 1°: 64 − 4, and the last joint adds to that. With three joints of a, at most 2 a² is left: √(9.978 / 2) = 2.23.
    [Fact]
    public void Where_the_last_joint_can_take_nothing_back_all_angles_have_to_be_small()
        => Assert.Equal(
            ["joint angles of 2.2° or less all along: bring gearbox, centre bearing and pinion closer to one line"],
            Find(new("shaft", Piece(Yokes.InLine), Piece(Yokes.InLine)) { Line = InventedShaft.Line(3, 11, 13, 14) }).Cures);

    [Fact]
    public void What_was_not_looked_at_is_asked_for()
    {
        var finding = Find(new("shaft", new ShaftPiece()));

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Equal(2, finding.Cures.Count);
    }

    private static ShaftPiece Piece(Yokes yokes) => new(InventedShaft.Piece.Outer, InventedShaft.Piece.Wall, InventedShaft.Piece.Length, yokes);

    private static Finding Find(double front, double rear) => Find(InventedShaft.Plain with { Line = InventedShaft.Line(3, 3 + front, 3 + front - rear) });

    private static Finding Find(Propshaft shaft) => Assert.Single(new TorsionalCheck().Look(InventedShaft.Car(3000, shaft), OwnersGoals.None));
}
