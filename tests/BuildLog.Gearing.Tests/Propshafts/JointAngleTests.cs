using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.Measurements;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Propshafts;

public sealed class JointAngleTests
{
    private const double Degree = InventedShaft.Degree;

    // Box 3°, shaft 6°, pinion 2°: the joints work at 3° and 4°, to opposite sides.
    [Fact]
    public void The_joints_are_the_differences_of_the_slopes()
    {
        var joints = JointAngle.Of(InventedShaft.Line(3, 6, 2))!;

        Assert.Equal([3, -4], joints.Select(joint => Math.Round(joint.Side.Value / Degree, 9)));
        Assert.Equal([3, 4], joints.Select(joint => Math.Round(joint.Compound.Value / Degree, 9)));
    }

    [Fact]
    public void A_slope_that_was_not_measured_leaves_the_joints_unknown()
        => Assert.Null(JointAngle.Of([.. InventedShaft.Line(3, 6), new Inclination(null)]));

    // The shaft's reading is in both joints: read half a degree too steep, one opens and the other closes, and together they are none the worse.
    [Fact]
    public void An_error_of_the_shafts_slope_is_shared_by_its_two_joints()
    {
        var shaft = InventedCar.Of(6 * Degree, 0.5 * Degree, "shaft's slope");
        var joints = JointAngle.Of([.. InventedShaft.Line(3), new Inclination(InventedShaft.Known(shaft)), .. InventedShaft.Line(3)])!;

        Assert.Equal(0.5 * Degree, joints[0].Side.StandardUncertainty, 1e-12);
        Assert.True((joints[0].Side + joints[1].Side).IsExact);
    }

    // Second route: the angle between the two members in space.
    [Fact]
    public void The_compound_angle_is_the_angle_in_space()
        => Gen.Select(Gen.Double[-6, 6], Gen.Double[-6, 6], Gen.Double[-6, 6], Gen.Double[-6, 6]).Sample((side1, plan1, side2, plan2) =>
        {
            var joint = JointAngle.Of([At(side1, plan1), At(side2, plan2)])![0].Compound.Value;
            double[] a = [1, Math.Tan(plan1 * Degree), Math.Tan(side1 * Degree)], b = [1, Math.Tan(plan2 * Degree), Math.Tan(side2 * Degree)];
            var cos = a.Zip(b, (x, y) => x * y).Sum() / Math.Sqrt(a.Sum(x => x * x) * b.Sum(x => x * x));

            Assert.Equal(Math.Acos(Math.Min(1, cos)), joint, 0.015 * joint + 1e-6);
        });

    // By hand: side 3° and plan 4° are a joint of 5°; half of u(side)'s 1° comes through at 3/5.
    [Fact]
    public void The_uncertainty_of_a_compound_angle()
    {
        var joint = new JointAngle(InventedCar.Of(3 * Degree, 1 * Degree), 4 * Degree);

        Assert.Equal(5, joint.Compound.Value / Degree, 1e-9);
        Assert.Equal(0.6, joint.Compound.StandardUncertainty / Degree, 1e-9);
    }

    [Fact]
    public void A_straight_joint_keeps_its_uncertainty()
        => Assert.Equal(0.01, new JointAngle(InventedCar.Of(0, 0.01), 0).Compound.StandardUncertainty, 1e-12);

    // 60 mm over 1.2 m: atan 0.05 = 2.8624°.
    [Fact]
    public void A_plan_angle_from_two_offsets()
        => Assert.Equal(2.8624, Inclination.PlanFromOffsets(0.08, 0.02, 1.2).Value / Degree, 1e-4);

    [Fact]
    public void It_moves_with_its_offsets_as_small_differences_say()
    {
        SmallDifferences.Agree(x => Inclination.PlanFromOffsets(x, 0.02, 0.3), 0.25);
        SmallDifferences.Agree(x => Inclination.PlanFromOffsets(0.25, x, 0.3), 0.02);
        SmallDifferences.Agree(x => Inclination.PlanFromOffsets(0.25, 0.02, x), 0.3);
    }

    // Output, one piece and pinion: three members have two joints; what was not measured has none.
    [Fact]
    public void A_shaft_has_a_joint_between_each_two_members()
    {
        var shaft = new Propshaft("shaft", InventedShaft.Piece) { Line = InventedShaft.Line(3, 6, 3) };

        Assert.Equal(2, shaft.Joints!.Count);
        Assert.Null(new Propshaft("bare", InventedShaft.Piece) { Line = null }.Joints);
    }

    private static Inclination At(double side, double plan) => new(InventedShaft.Known(side * Degree), InventedShaft.Known(plan * Degree));
}
