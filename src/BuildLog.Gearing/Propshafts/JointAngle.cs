using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Propshafts;

/// <summary>The working angle of one universal joint.</summary>
/// <param name="Side">Difference of the two members' inclinations seen from the side, radians.</param>
/// <param name="Plan">The same seen from above.</param>
/// <remarks>
/// <code>side = next − previous,   plan = next − previous,   β = √(side² + plan²)</code>
/// <para>
/// Uncertainty: two joints of a shaft share its reading, so an error there opens one and closes the other; <see cref="Measured"/> keeps that.
/// </para>
/// <para>For angles up to 12°, where it is within 1 % of the angle in space. Source: a shaft maker's installation manual.</para>
/// </remarks>
public sealed record JointAngle(Measured Side, Measured Plan)
{
    /// <summary>Radians; zero or more.</summary>
    public Measured Compound
    {
        get
        {
            var beta = Math.Sqrt((Side.Value * Side.Value) + (Plan.Value * Plan.Value));

            // A joint that lies straight can be wrong to any side; the side view's error stands for it.
            return beta == 0 ? Side : ((Side * Side) + (Plan * Plan)).SquareRoot();
        }
    }

    /// <summary>The joints between the members of a line, from the front; null while a side angle is missing.</summary>
    public static IReadOnlyList<JointAngle>? Of(IReadOnlyList<Inclination> line)
        => line.Any(member => member.Side is null)
            ? null
            : [.. line.Zip(line.Skip(1), (front, rear) => new JointAngle(rear.Side!.Value - front.Side!.Value, InPlan(rear) - InPlan(front)))];

    private static Measured InPlan(Inclination member) => member.Plan?.Value ?? 0;
}
