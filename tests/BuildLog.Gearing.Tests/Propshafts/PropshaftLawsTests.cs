using BuildLog.Gearing.Propshafts;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Propshafts;

/// <summary>What holds of shafts and their joints whatever the numbers are.</summary>
public sealed class PropshaftLawsTests
{
    private const double Degree = Math.PI / 180;

    private static readonly Gen<double> Angles = Gen.Double[0.5 * Degree, 10 * Degree];

    [Fact]
    public void A_joint_is_bent_alike_seen_from_its_other_side_or_turned_about_the_shaft()
        => Gen.Select(Angles, Angles).Sample((side, plan) =>
        {
            var joint = new JointAngle(side, plan);

            Assert.Equal(joint.Compound.Value, new JointAngle(-side, -plan).Compound.Value, 1e-12);
            Assert.Equal(joint.Compound.Value, new JointAngle(plan, side).Compound.Value, 1e-12);
            Assert.InRange(joint.Compound.Value, Math.Max(side, plan), side + plan);
        });

    // Which way the page is turned, or which end is called the front, is no matter to the shaft.
    [Fact]
    public void A_line_shakes_alike_turned_about_its_length_or_read_from_the_rear()
        => Gen.Select(Angles, Angles, Angles, Angles, Gen.Double[0, Math.PI]).Sample((side1, plan1, side2, plan2, turn) =>
        {
            JointAngle Turned(double side, double plan) => new((side * Math.Cos(turn)) - (plan * Math.Sin(turn)), (side * Math.Sin(turn)) + (plan * Math.Cos(turn)));
            var shake = EquivalentAngle.Squared([new(side1, plan1), new(side2, plan2)], [Yokes.InLine]).Value;

            Assert.Equal(shake, EquivalentAngle.Squared([Turned(side1, plan1), Turned(side2, plan2)], [Yokes.InLine]).Value, 1e-12);
            Assert.Equal(shake, EquivalentAngle.Squared([new(side2, plan2), new(side1, plan1)], [Yokes.InLine]).Value, 1e-12);
        });

    [Fact]
    public void A_bent_joint_is_as_far_ahead_as_behind_and_never_more_than_its_non_uniformity_says()
        => Gen.Select(Gen.Double[0, Math.PI / 2], Angles).Sample((turn, angle) =>
        {
            var ahead = CardanJoint.OutputTurn(turn, angle) - turn;
            var quarterOn = CardanJoint.OutputTurn(turn + (Math.PI / 2), angle) - (turn + (Math.PI / 2));

            // Twice a turn, in opposite halves; β²/4 either way, to the second order.
            Assert.True(ahead * quarterOn <= 1e-12);
            Assert.InRange(Math.Abs(ahead), 0, (angle * angle / 4 * 1.05) + 1e-12);
            Assert.InRange(CardanJoint.NonUniformity(angle), angle * angle * 0.99, angle * angle * 1.05);
        });

    [Fact]
    public void Shake_grows_with_the_square_of_the_speed()
        => Gen.Select(Angles, Gen.Double[10, 60], Gen.Double[1, 3]).Sample((angle, speed, faster) =>
            Assert.Equal(TorsionalAcceleration.Of(angle * angle, speed).Value * faster * faster, TorsionalAcceleration.Of(angle * angle, speed * faster).Value, 1e-6));

    [Fact]
    public void The_slip_joint_travels_more_the_further_the_axle_moves()
        => Gen.Select(Gen.Double[0.6, 1.6], Gen.Double[0, 0.15], Gen.Double[0.02, 0.1], Gen.Double[0.02, 0.1], Gen.Double[1, 1.5]).Sample((length, inclination, droop, bump, more) =>
            Assert.True(SlipTravel.Of(length, inclination, droop * more, bump * more).Total.Value >= SlipTravel.Of(length, inclination, droop, bump).Total.Value - 1e-12));

    [Fact]
    public void A_joint_chart_allows_less_angle_the_faster_the_shaft()
        => Gen.Select(Gen.Double[5, 80], Gen.Double[0, 20]).Sample((speed, more) =>
            Assert.True(JointAngleChart.Limit(speed + more).Value <= JointAngleChart.Limit(speed).Value + 1e-12));
}
