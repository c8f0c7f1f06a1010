using BuildLog.Gearing.Propshafts;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Propshafts;

public sealed class CardanJointTests
{
    // tan α₂ = tan α₁ / cos β, a catalogue's joint law: 45° through 30° come out at atan(1 / 0.8660) = 49.1066°.
    [Fact]
    public void The_output_leads_between_the_quarters()
        => Assert.Equal(49.1066, CardanJoint.OutputTurn(Math.PI / 4, Math.PI / 6) * 180 / Math.PI, 1e-4);

    [Fact]
    public void At_every_quarter_turn_both_ends_agree()
        => Assert.All(Enumerable.Range(0, 9), k => Assert.Equal(k * Math.PI / 2, CardanJoint.OutputTurn(k * Math.PI / 2, 0.3), 1e-12));

    // Second route: the output's speed by small differences over a turn.
    [Fact]
    public void The_swing_is_between_the_fastest_and_the_slowest_of_a_turn()
        => Gen.Double[0.01, 0.4].Sample(
            angle =>
            {
                var speeds = Enumerable.Range(0, 721).Select(k => k * Math.PI / 360).Select(turn
                    => (CardanJoint.OutputTurn(turn + 1e-5, angle) - CardanJoint.OutputTurn(turn - 1e-5, angle)) / 2e-5).ToList();

                Assert.Equal(CardanJoint.NonUniformity(angle), speeds.Max() - speeds.Min(), 1e-6);
            }, iter: 100);

    // Worked example E10.
    [Fact]
    public void Five_degrees_swing_by_three_quarters_of_a_per_cent()
        => Assert.Equal(0.00762514, CardanJoint.NonUniformity(5 * Math.PI / 180), 1e-8);
}
