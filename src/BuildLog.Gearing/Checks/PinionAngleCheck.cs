using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>Once it hangs in its springs, the pinion lies parallel to the output that drives it.</summary>
/// <remarks>
/// <code>pinion = spring pad + pinion to perch;   |pinion − output| ≤ 1°</code>
/// <para>
/// Seen from the side, positive where the front is higher. It tells before the axle is in what an angle gauge tells after: then the joint angles count. A
/// wedge under the perch turns the pinion, so more than the degree is a watch. Says nothing until the perches' angle was measured.
/// </para>
/// <para>Limit: the two ends within 1°, a shaft maker's manual, for joints that cancel each other.</para>
/// </remarks>
internal sealed class PinionAngleCheck : ICheck
{
    private static string Limit => Spoken("both ends within 1°, a shaft maker's manual");

    private static readonly double Degree = Units.Degree.ToBase(1);
    private static readonly Window Parallel = new(-Degree, Degree);

    public string Id => "pinion-angle";

    public string Title => Spoken("Pinion angle from the perches");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => HungAxle.Of(driveline).Where(hung => hung is { Axle.PinionToPerch: not null, Shaft: not null }).Select(Judge);

    private Finding Judge(HungAxle hung)
    {
        IReadOnlyList<Position> between = [hung.ShaftPosition, hung.Position];
        var (output, pad) = (hung.Shaft!.Line?[0].Side, hung.Hanging.Pad);
        if (output is null || pad is null)
            return this.Open(between, Spoken($"Where the {hung.Position.InWords()}'s pinion will point"), [.. Lacking(output, pad)], Units.Degree, Parallel, Limit);

        var pinion = pad.Value + hung.Axle.PinionToPerch!.Value;
        var off = pinion - output.Value;
        var wedge = Said.Number(Math.Abs(off.Value), Units.Degree, 1);
        return this.Judged(new(
            between, off, Units.Degree, Parallel,
            $"On its springs the {hung.Position.InWords()}'s pinion will lie at {Said.Number(pinion, Units.Degree, 1)}, the output that drives it at {Said.Number(output.Value, Units.Degree, 1)}.", Limit)
        {
            LimitIsVerified = false,
            Cures = [$"wedges of {wedge} at the perches that turn the pinion's front end {(off.Value > 0 ? Spoken("down") : Spoken("up"))}"],
        });
    }

    private static IEnumerable<Missing> Lacking(Known? output, Known? pad)
    {
        if (output is null) yield return new(Spoken("the output's angle is not known"), Spoken("lay an angle gauge on the output, from the side"));
        if (pad is null) yield return new(Spoken("the springs' angle is not known"), Spoken("lay an angle gauge on the spring at its centre bolt, the vehicle at ride height, and enter it with the vehicle"));
    }
}
