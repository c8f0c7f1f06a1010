using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>The joints of a propshaft take back what they do to its turning.</summary>
/// <remarks>
/// <code>α = β_eq² ω²;   ≤ 300 rad/s² fits, > 400 clashes;   ends more than 1° apart are a watch in any case</code>
/// <para>At the fastest turn. Formulas and sources see <see cref="EquivalentAngle"/> and <see cref="TorsionalAcceleration"/>; 1°: a shaft maker's manual.</para>
/// </remarks>
internal sealed class TorsionalCheck : ICheck
{
    private static string Limit => Spoken("300 rad/s², an axle maker's guide; 400, a published table of joint angles");
    private const double EndsApart = Math.PI / 180;

    private static readonly TwoLimits Limits = new(Window.AtMost(TorsionalAcceleration.Good), Window.AtMost(TorsionalAcceleration.Limit));

    public string Id => "torsional-residual";

    public string Title => Spoken("Shake left by the joints");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => FittedShaft.Of(driveline)
            .Select(shaft => (Shaft: shaft, Yokes: Yokes(shaft), Fastest: FastestTurn.Of(driveline, goals, shaft)))
            .Select(at => at is { Shaft.Shaft.Joints: { } joints, Yokes: { } yokes, Fastest: { } fastest }
                ? Judge(at.Shaft, joints, yokes, fastest)
                : this.Open(at.Shaft.Joint, Spoken($"How much the {at.Shaft.Position.InWords()} shakes"), [.. Lacking(at.Shaft, at.Fastest)], Limit));

    private Finding Judge(FittedShaft shaft, IReadOnlyList<JointAngle> joints, IReadOnlyList<Yokes> yokes, FastestTurn fastest)
    {
        var shake = TorsionalAcceleration.Of(EquivalentAngle.Squared(joints, yokes), fastest.Speed);
        var apart = Math.Abs(joints[0].Compound.Value - joints[^1].Compound.Value);
        var judged = Limits.Judge(shake);
        if (judged.Verdict == Verdict.Fits && shaft.Shaft.Pieces.Count == 1 && apart > EndsApart + 1e-9) judged = (Verdict.Watch, Because.UnverifiedLimit);

        return this.Judged(new(
            shaft.Joint, shake, Units.RadianPerSecondSquared, Limits.Good,
            $"The {shaft.Position.InWords()}'s joints ({string.Join(", ", joints.Select(joint => Said.Number(joint.Compound, Units.Degree, 1)))}) leave "
                + $"{Said.Number(shake, Units.RadianPerSecondSquared, 0)} {fastest.At}; wanted {Limits.Good.InWords(Units.RadianPerSecondSquared)}.",
            Limit)
        {
            ByLimits = judged,
            Reaches = Limits.Straddled(shake),
            Cures = Cure(joints, yokes, fastest.Speed.Value),
        });
    }

    private static IReadOnlyList<Sentence> Cure(IReadOnlyList<JointAngle> joints, IReadOnlyList<Yokes> yokes, double turns)
    {
        if (yokes.All(piece => piece == Propshafts.Yokes.InLine)) return [Angles(joints, yokes, turns)];

        IReadOnlyList<Yokes> inLine = [.. yokes.Select(_ => Propshafts.Yokes.InLine)];
        var turned = Spoken("yokes in line on every piece of the shaft");
        return IsCured(joints, inLine, turns) ? [turned] : [$"{turned}, and {Angles(joints, inLine, turns)}"];
    }

    // The others taken as they are, what the last joint may be: β² within 300/ω² of what they leave. Where it would add to them, small angles all along.
    private static Sentence Angles(IReadOnlyList<JointAngle> joints, IReadOnlyList<Yokes> yokes, double turns)
    {
        var room = TorsionalAcceleration.Good / Math.Pow(2 * Math.PI * turns, 2);
        var left = EquivalentAngle.Squared([.. joints.SkipLast(1)], [.. yokes.SkipLast(1)]).Value;
        var (low, high) = (Math.Sqrt(Math.Max(0, left - room)), Math.Sqrt(left + room));
        return IsCured([.. joints.SkipLast(1), Opened(joints[^1], (low + high) / 2)], yokes, turns)
            ? Spoken($"a rear joint angle of {Said.Between(low, high, Units.Degree, 1)}: turn the pinion, or raise or lower the gearbox's mount")
            : Spoken($"joint angles of {Said.OrLess(Math.Sqrt(room / ((joints.Count + 1) / 2)), Units.Degree, 1)} all along: bring gearbox, centre bearing and pinion closer to one line");
    }

    private static bool IsCured(IReadOnlyList<JointAngle> joints, IReadOnlyList<Yokes> yokes, double turns)
        => TorsionalAcceleration.Of(EquivalentAngle.Squared(joints, yokes), turns).Value <= TorsionalAcceleration.Good;

    /// <summary>The joint at another angle in the plane it works in.</summary>
    private static JointAngle Opened(JointAngle joint, double angle)
        => joint.Compound.Value == 0 ? new(angle, 0) : new(joint.Side.Value * angle / joint.Compound.Value, joint.Plan.Value * angle / joint.Compound.Value);

    private static IEnumerable<Missing> Lacking(FittedShaft shaft, FastestTurn? fastest)
    {
        if (shaft.Shaft.Joints is null)
            yield return new(Spoken("not all angles are measured"), Spoken("lay an angle gauge on the gearbox's output, each piece of the shaft and the pinion, the vehicle standing on its wheels"));
        if (Yokes(shaft) is null) yield return new(Spoken("how the yokes stand is not known"), Spoken("look along the tube: are the two yokes of a piece in one plane?"));
        if (fastest is null) yield return new(Spoken("its fastest turn is not known"), Spoken("enter the engine's redline, or the top speed wanted"));
    }

    private static IReadOnlyList<Yokes>? Yokes(FittedShaft shaft)
        => shaft.Shaft.Pieces.All(piece => piece.Yokes is not null) ? [.. shaft.Shaft.Pieces.Select(piece => piece.Yokes!.Value)] : null;
}
