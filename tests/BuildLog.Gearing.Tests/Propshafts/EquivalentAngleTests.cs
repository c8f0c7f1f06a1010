using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.Published;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Propshafts;

public sealed class EquivalentAngleTests
{
    private const double Degree = InventedShaft.Degree;

    // Worked examples E4 at 3000 rev/min: |b1² − b2²| ω².
    [Theory]
    [InlineData(3, 2, 150.323)]
    [InlineData(4, 3, 210.452)]
    [InlineData(5, 4, 270.581)]
    [InlineData(6, 5, 330.710)]
    public void One_degree_apart_shakes_more_at_larger_angles(double first, double second, double acceleration)
        => Assert.Equal(acceleration, TorsionalAcceleration.Of(Squared([InPlane(first), InPlane(-second)], Yokes.InLine), 50).Value, 1e-3);

    // 3000 rev/min: 3.16° for 300 rad/s², 3.65° for 400.
    [Fact]
    public void What_a_single_joint_may_be_at_3000_rev_per_minute()
    {
        Assert.Equal(3.16, ShaftTables.SecondAngle(3000, 0, TorsionalAcceleration.Good), 5e-3);
        Assert.Equal(3.65, ShaftTables.SecondAngle(3000, 0, TorsionalAcceleration.Limit), 5e-3);
    }

    [Fact]
    public void Equal_angles_cancel_in_line_and_add_a_quarter_turn_apart()
    {
        Assert.Equal(0, Squared([InPlane(6), InPlane(-6)], Yokes.InLine).Value, 1e-15);
        Assert.Equal(Math.Pow(6 * Degree, 2) * 2, Squared([InPlane(6), InPlane(-6)], Yokes.QuarterTurn).Value, 1e-12);
    }

    // Joints in planes at right angles: in line they add, as a shaft that is bent sideways at one end and down at the other.
    [Fact]
    public void In_planes_at_right_angles_yokes_in_line_do_not_cancel()
        => Assert.Equal(
            Math.Pow(4 * Degree, 2) * 2,
            Squared([InPlane(4), new JointAngle(0, 4 * Degree)], Yokes.InLine).Value, 1e-12);

    // Second route: turn the exact joints one behind the other through a turn and see how far the output strays: β_eq²/2 from side to side.
    [Fact]
    public void It_is_how_far_the_exact_joints_let_the_output_stray()
        => Gen.Select(Gen.Double[-8, 8].Array[2, 4], Gen.Double[-8, 8].Array[4], Gen.Bool.Array[3]).Sample((sides, plans, turned) =>
        {
            var joints = sides.Select((side, k) => new JointAngle(side * Degree, plans[k] * Degree)).ToList();
            Yokes[] pieces = [.. turned.Take(joints.Count - 1).Select(turn => turn ? Yokes.QuarterTurn : Yokes.InLine)];
            var largest = joints.Max(joint => Math.Pow(joint.Compound.Value, 2));

            Assert.Equal(Squared(joints, pieces).Value / 2, Strays(joints, pieces), (0.06 * largest) + 1e-12);
        }, iter: 300);

    // Output and pinion parallel: whatever the shaft's slope is, both joints work at one angle. The pinion's slope counts: u(b²) = 2 b u(b).
    [Fact]
    public void Between_parallel_ends_the_shafts_slope_does_not_matter_and_the_pinions_does()
    {
        var read = InventedShaft.Known(InventedCar.Of(6 * Degree, 0.1 * Degree));
        var shaft = JointAngle.Of([.. InventedShaft.Line(3), new(read), .. InventedShaft.Line(3)])!;
        var pinion = JointAngle.Of([.. InventedShaft.Line(6, 9), new(read)])!;

        Assert.Equal(0, Squared(shaft, Yokes.InLine).StandardUncertainty, 1e-12);
        Assert.Equal(2 * 3 * 0.1, Squared(pinion, Yokes.InLine).StandardUncertainty / (Degree * Degree), 1e-9);
    }

    [Fact]
    public void Between_each_two_joints_there_is_one_piece()
        => Assert.Throws<ArgumentException>(() => EquivalentAngle.Squared([InPlane(3)], [Yokes.InLine]));

    private static JointAngle InPlane(double degrees) => new(degrees * Degree, 0);

    private static Measured Squared(IReadOnlyList<JointAngle> joints, params Yokes[] pieces) => EquivalentAngle.Squared(joints, pieces);

    private static double Strays(List<JointAngle> joints, Yokes[] pieces)
    {
        var errors = Enumerable.Range(0, 720).Select(step =>
        {
            var start = step * Math.PI / 360;
            var turn = start;
            for (var k = 0; k < joints.Count; k++)
            {
                // The plane of the joint, and how the driving yoke stands against that of the first joint.
                var plane = Math.Atan2(joints[k].Plan.Value, joints[k].Side.Value);
                var yoke = Enumerable.Range(0, k).Sum(piece => pieces[piece] == Yokes.InLine ? Math.PI / 2 : Math.PI);
                turn = CardanJoint.OutputTurn(turn + yoke - plane, joints[k].Compound.Value) - yoke + plane;
            }

            return turn - start;
        }).ToList();
        return errors.Max() - errors.Min();
    }
}
