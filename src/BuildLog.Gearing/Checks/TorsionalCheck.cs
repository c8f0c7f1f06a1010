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
    internal const double EndsApart = Math.PI / 180;

    // What an angle gauge is read to, and as close as two joints can be shimmed alike.
    private const double Tenth = Math.PI / 1800;
    private const double Workable = 5 * Tenth;
    private const double Rounding = 1e-9;

    private static readonly TwoLimits Limits = new(Window.AtMost(TorsionalAcceleration.Good), Window.AtMost(TorsionalAcceleration.Limit));

    public string Id => "torsional-residual";

    public string Title => Spoken("Shake left by the joints");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => FittedShaft.Of(driveline)
            .Select(shaft => OfShaft(driveline, goals, shaft) ?? this.Open(
                shaft.Joint, Spoken($"How much the {shaft.Position.InWords()} shakes"), [.. Lacking(shaft, FastestTurn.Of(driveline, goals, shaft))], Limit));

    /// <summary>What is left of one shaft's joints; null where a number is missing.</summary>
    internal Finding? OfShaft(Driveline driveline, OwnersGoals goals, FittedShaft shaft)
        => shaft.Shaft.Joints is { } joints && Yokes(shaft) is { } yokes && FastestTurn.Of(driveline, goals, shaft) is { } fastest ? Judge(shaft, joints, yokes, fastest).At(fastest, driveline) : null;

    private Finding Judge(FittedShaft shaft, IReadOnlyList<JointAngle> joints, IReadOnlyList<Yokes> yokes, FastestTurn fastest)
    {
        var shake = TorsionalAcceleration.Of(EquivalentAngle.Squared(joints, yokes), fastest.Speed);
        var apart = Math.Abs(joints[0].Compound.Value - joints[^1].Compound.Value);
        var unlike = shaft.Shaft.Pieces.Count == 1 && apart > EndsApart + Rounding;
        var judged = Limits.Judge(shake);
        if (judged.Verdict == Verdict.Fits && unlike) judged = (Verdict.Watch, Because.UnverifiedLimit);

        return this.Judged(new(
            shaft.Joint, shake, Units.RadianPerSecondSquared, Limits.Good,
            $"The {shaft.Position.InWords()}'s joints ({string.Join(", ", joints.Select(joint => Said.Number(joint.Compound, Units.Degree, 1)))}) leave "
                + $"{Said.Number(shake, Units.RadianPerSecondSquared, 0)} {fastest.At}; wanted {Limits.Good.InWords(Units.RadianPerSecondSquared)}{(unlike ? Spoken(", and ends within 1° of each other") : "")}.{AssumedLoad.PlanInWords(shaft.Shaft)}",
            Limit)
        {
            ByLimits = judged,
            Reaches = Limits.Straddled(shake),
            Cures = Cure(joints, yokes, fastest.Speed),
        });
    }

    // Gone through only where a cure is asked for: it tries angle after angle.
    private static IEnumerable<Sentence> Cure(IReadOnlyList<JointAngle> joints, IReadOnlyList<Yokes> yokes, Measured turns)
    {
        IReadOnlyList<Yokes> inLine = [.. yokes.Select(_ => Propshafts.Yokes.InLine)];
        var turned = Spoken("yokes in line on every piece of the shaft");
        if (yokes.SequenceEqual(inLine)) yield return Angles(joints, yokes, turns);
        else if (IsCured(joints, inLine, turns)) yield return turned;
        else yield return $"{turned}, and {Angles(joints, inLine, turns)}";
    }

    private static Sentence Angles(IReadOnlyList<JointAngle> joints, IReadOnlyList<Yokes> inLine, Measured turns)
    {
        var best = JointAngleCheck.Best(turns);
        var sure = JointAngleCheck.Surely(best, joints.MaxBy(joint => joint.Compound.Expanded95)!.Compound);
        return (Rear(joints, inLine, turns, best, sure) ?? (joints.Count == 2 ? Alike(joints, inLine, turns, sure) : Small(joints, inLine, turns, sure)))
            ?? Said.As($"joint angles of {best.InWords(Units.Degree)} that take each other back, measured more closely than these");
    }

    // Where the others last as they are, the last joint alone can do it.
    private static Sentence? Rear(IReadOnlyList<JointAngle> joints, IReadOnlyList<Yokes> inLine, Measured turns, Window best, Window sure)
    {
        if (!joints.SkipLast(1).All(joint => best.Contains(joint.Compound.Interval95))) return null;

        var front = joints[0].Compound.Value;
        var cures = Tenths(sure)
            .Where(angle => joints.Count > 2 || Math.Abs(angle - front) <= EndsApart + Rounding)
            .Where(angle => Turned(joints[^1], angle).All(turned => IsCured([.. joints.SkipLast(1), turned], inLine, turns)))
            .ToList();
        return cures.Count == 0 ? null
            : Said.As($"a rear joint angle of {Said.Between(cures[0], cures[^1], Units.Degree, 1)}: turn the pinion, or raise or lower the gearbox's mount");
    }

    // Both ends of one piece: the larger the angles, the closer they have to be.
    private static Sentence? Alike(IReadOnlyList<JointAngle> joints, IReadOnlyList<Yokes> inLine, Measured turns, Window sure)
    {
        bool Cures(double most, double apart) => IsCured([Opened(joints[0], most), Opened(joints[1], Math.Max(0, most - apart))], inLine, turns);

        foreach (var most in Tenths(sure).Reverse().Where(most => Cures(most, Workable)))
        {
            var apart = Tenths(new(Workable, EndsApart)).Last(apart => Cures(most, apart));
            return Said.As($"both joints at {Said.Between(sure.Low, most, Units.Degree, 1)} and within {Said.Between(apart, apart, Units.Degree, 1)} of each other: turn the pinion, and raise or lower the gearbox's mount");
        }

        return null;
    }

    // Of a divided shaft every other joint can add up.
    private static Sentence? Small(IReadOnlyList<JointAngle> joints, IReadOnlyList<Yokes> inLine, Measured turns, Window sure)
    {
        bool Cures(double most)
        {
            IReadOnlyList<JointAngle> opened = [.. joints.Select(joint => Opened(joint, most))];
            var adding = TorsionalAcceleration.Of((joints.Count + 1) / 2 * most * most, turns).Value;
            return adding + TorsionalAcceleration.Of(EquivalentAngle.Squared(opened, inLine), turns).Expanded95 <= TorsionalAcceleration.Good;
        }

        return Tenths(sure).Reverse().Where(Cures).Select(most => Said.As($"joint angles of {Said.Between(sure.Low, most, Units.Degree, 1)} all along: bring gearbox, centre bearing and pinion closer to one line")).FirstOrDefault();
    }

    private static bool IsCured(IReadOnlyList<JointAngle> joints, IReadOnlyList<Yokes> yokes, Measured turns)
        => Limits.Good.Contains(TorsionalAcceleration.Of(EquivalentAngle.Squared(joints, yokes), turns).Interval95);

    private static IEnumerable<double> Tenths(Window angles)
    {
        for (var k = Math.Ceiling((angles.Low / Tenth) - 1e-6); k <= Math.Floor((angles.High / Tenth) + 1e-6); k++) yield return k * Tenth;
    }

    // A joint that stands nearly straight may be turned to either side, and what the two joints share then adds up or cancels.
    private static IEnumerable<JointAngle> Turned(JointAngle joint, double angle)
        => joint.Compound.Value < joint.Compound.Expanded95 ? [Opened(joint, angle), Opened(joint, -angle)] : [Opened(joint, angle)];

    /// <summary>The joint at another angle in the plane it works in, known as well as it is now.</summary>
    private static JointAngle Opened(JointAngle joint, double angle)
    {
        var now = joint.Compound.Value;
        var (side, plan) = now == 0 ? (angle, 0) : (joint.Side.Value * angle / now, joint.Plan.Value * angle / now);
        return new(joint.Side - joint.Side.Value + side, joint.Plan - joint.Plan.Value + plan);
    }

    private static IEnumerable<Missing> Lacking(FittedShaft shaft, FastestTurn? fastest)
    {
        if (shaft.Shaft.Joints is null)
            yield return new(Spoken("not all angles are measured"), Spoken("lay an angle gauge on the gearbox's output, each piece of the shaft and the pinion, the vehicle standing on its wheels"));
        if (Yokes(shaft) is null) yield return new(Spoken("how the yokes stand is not known"), Spoken("look along the tube: are the two yokes of a piece in one plane?"));
        if (fastest is null) yield return new(Spoken("its fastest turn is not known"), Spoken("enter the engine's redline"));
    }

    private static IReadOnlyList<Yokes>? Yokes(FittedShaft shaft)
        => shaft.Shaft.Pieces.All(piece => piece.Yokes is not null) ? [.. shaft.Shaft.Pieces.Select(piece => piece.Yokes!.Value)] : null;
}
