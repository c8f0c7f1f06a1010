using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// At 3000 rev/min: 5° and 4° leave 270.6 rad/s², 6° and 5° 330.7 (worked examples E4); 7° and 5° 721.5.
/// Source of the limit: 300 rad/s², an axle maker's guide; 400, a published table of joint angles.
/// </remarks>
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

    // A front joint of 7° would itself not last at 3000 rev/min, so an equal rear one is no cure. At 3000 rev/min 9.978 square degrees are good:
    // 3° and 2° leave 5, and no pair up to 3° and within 1° leaves more.
    [Fact]
    public void Where_the_front_joint_cannot_stay_both_are_named()
        => Assert.Equal(["both joints at 0.5 to 3.0° and within 1.0° of each other: turn the pinion, and raise or lower the gearbox's mount"], Find(7, 5).Cures);

    // First joint 2.8°, and 5.6° behind it: 23.5 square degrees. Up to 3.0° it lasts, and 1.8° is a degree less.
    [Fact]
    public void Where_the_front_joint_lasts_the_rear_angle_that_would_do_is_named()
        => Assert.Equal(["a rear joint angle of 1.8 to 3.0°: turn the pinion, or raise or lower the gearbox's mount"], Find(2.8, 5.6).Cures);

    // At 6000 rev/min a quarter of 9.978 is good: 2.494; and the chart ends at 16 250 / 6000 = 2.708°. 2.7² − 2.2² = 2.45.
    [Fact]
    public void The_faster_it_turns_the_closer_they_have_to_be()
        => Assert.Equal(["both joints at 0.5 to 2.7° and within 0.5° of each other: turn the pinion, and raise or lower the gearbox's mount"], Find(InventedShaft.Plain with { Line = InventedShaft.Line(0, 37, 10) }, 6000).Cures);

    // Slopes read to a degree: what is named is sure while the angles are known no better, here and for the joints themselves.
    [Theory]
    [InlineData(5, 3)]
    [InlineData(2, 4)]
    [InlineData(1.2, 9)]
    [InlineData(1.5, 6)]
    public void What_is_named_fits_both_checks_with_the_gauge_there_is(double front, double rear)
    {
        var cure = Find(Gauged(front, rear), 4000).Cures[0];
        var said = Regex.Matches(cure, @"\d+\.\d").Select(number => double.Parse(number.Value, CultureInfo.InvariantCulture)).ToList();
        (double Front, double Rear)[] ends = cure.StartsWith("both", StringComparison.Ordinal)
            ? [(said[0], said[0]), (said[1], said[1]), (said[1], said[1] - said[2])]
            : [(front, said[0]), (front, said[^1])];

        foreach (var end in ends.Where(end => end.Rear >= said[0]))
        {
            Assert.Equal(Verdict.Fits, Find(Gauged(end.Front, end.Rear), 4000).Verdict);
            Assert.All(new JointAngleCheck().Look(InventedShaft.Car(4000, Gauged(end.Front, end.Rear)), OwnersGoals.None), finding => Assert.Equal(Verdict.Fits, finding.Verdict));
        }
    }

    // The page turned by 45°: side and plan are alike, and so is what would do. A rear joint that lies straight is opened in the side view.
    [Fact]
    public void The_rear_angle_is_named_in_the_plane_the_joints_work_in()
    {
        var line = new[] { 3.0, 5.8, 0.2 }.Select(slope => new Inclination(Turned(slope), Turned(slope))).ToArray();

        Assert.Equal(Find(2.8, 5.6).Cures, Find(InventedShaft.Plain with { Line = line }).Cures);

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

    // 7° and 1° in line still leave 49 − 1 = 48 square degrees, and 9.978 are good; 7° is past the chart.
    [Fact]
    public void Where_the_yokes_alone_do_not_do_it_the_angle_is_named_too()
        => Assert.Equal(
            ["yokes in line on every piece of the shaft, and both joints at 0.5 to 3.0° and within 1.0° of each other: turn the pinion, and raise or lower the gearbox's mount"],
            Find(new("shaft", Piece(Yokes.QuarterTurn)) { Line = InventedShaft.Line(3, 10, 9) }).Cures);

    // Two pieces, 8°, 2° and 1°: 64 − 4, and the last joint adds to that. With three joints of a, at most 2 a² is left: √(9.978 / 2) = 2.23.
    [Fact]
    public void Where_the_last_joint_can_take_nothing_back_all_angles_have_to_be_small()
        => Assert.Equal(
            ["joint angles of 0.5 to 2.2° all along: bring gearbox, centre bearing and pinion closer to one line"],
            Find(new("shaft", Piece(Yokes.InLine), Piece(Yokes.InLine)) { Line = InventedShaft.Line(3, 11, 13, 14) }).Cures);

    [Fact]
    public void What_was_not_looked_at_is_asked_for()
    {
        var finding = Find(new("shaft", new ShaftPiece()));

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Equal(2, finding.Cures.Count);
    }

    private static ShaftPiece Piece(Yokes yokes) => new(InventedShaft.Piece.Outer, InventedShaft.Piece.Wall, InventedShaft.Piece.Length, yokes);

    private static Propshaft Gauged(double front, double rear)
    {
        static Inclination Slope(double degrees) => new(InventedShaft.Known(
            Measured.From(degrees * InventedShaft.Degree, Input.Rectangular("gauge", InventedShaft.Degree / 2, new("gauge")))));
        return InventedShaft.Plain with { Line = [Slope(3), Slope(3 + front), Slope(3 + front - rear)] };
    }

    private static Finding Find(double front, double rear) => Find(InventedShaft.Plain with { Line = InventedShaft.Line(3, 3 + front, 3 + front - rear) });

    private static Finding Find(Propshaft shaft, double redline = 3000) => Assert.Single(new TorsionalCheck().Look(InventedShaft.Car(redline, shaft), OwnersGoals.None));
}
