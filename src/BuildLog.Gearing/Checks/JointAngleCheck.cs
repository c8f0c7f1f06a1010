using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>Each universal joint works at an angle that it lasts at.</summary>
/// <remarks>
/// <code>½° … 3° fits;   above 3° a watch;   above the chart at the fastest turn a clash;   below ½° a watch</code>
/// <para>Chart and its source see <see cref="JointAngleChart"/>; beyond its last row it may warn, and clashes only where that row would. Angles at ride height.</para>
/// <para>Above the chart a double joint is named beside the angle: it turns evenly by itself. Common practice, no source.</para>
/// </remarks>
internal sealed class JointAngleCheck : ICheck
{
    private static string Limit => Spoken("joint angle chart, a propshaft shop's page; ½° and 3°, a shaft maker's manual");

    public string Id => "joint-angles";

    public string Title => Spoken("Joint angles");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => FittedShaft.Of(driveline).SelectMany(shaft => Judge(driveline, shaft, FastestTurn.Of(driveline, goals, shaft)));

    private IEnumerable<Finding> Judge(Driveline driveline, FittedShaft shaft, FastestTurn? fastest)
    {
        if (shaft.Shaft.Joints is { } joints && fastest is not null) return joints.Select((joint, k) => Judge(shaft, k, joint.Compound, fastest).At(fastest, driveline));

        return [this.Open(shaft.Joint, Spoken($"Whether the {shaft.Position.InWords()}'s joints last"), [.. Lacking(shaft, fastest)], Limit)];
    }

    private Finding Judge(FittedShaft shaft, int joint, Measured angle, FastestTurn fastest)
    {
        var chart = JointAngleChart.Limit(fastest.Speed);
        var good = Best(fastest.Speed);
        var sure = Surely(good, angle);
        var allowed = Window.AtMost(chart.Value);

        // Against the chart by the quotient, so that what is not known of the speed counts too.
        // More speed never allows more angle, so what the chart's last row forbids stays forbidden beyond it.
        var forbidden = JointAngleChart.Covers(fastest.Speed) || Window.AtMost(JointAngleChart.LastLimit).Misses(angle.Interval95);
        var overChart = Verdicts.Judge(angle / chart, Window.AtMost(1), forbidden);
        var judged = overChart.Verdict == Verdict.Fits ? new TwoLimits(good, allowed).Judge(angle) : overChart;
        var (named, degree) = (Named(shaft, joint), Units.Degree);
        return this.Judged(new(
            shaft.Joint, angle, degree, good,
            $"{Said.Capital(named)} works at {Said.Number(angle, degree, 1)}; with {Said.Number(fastest.Speed, Units.RevolutionPerMinute, 0)} {fastest.At} "
                + $"it may go to {Said.Number(chart.Value, degree, 1)}, and runs best at {good.InWords(degree)}.{AssumedLoad.PlanInWords(shaft.Shaft)}",
            Limit)
        {
            ByLimits = judged,
            Reaches = new TwoLimits(good, allowed).Straddled(angle),
            Cures =
            [
                $"an angle of {sure.InWords(degree)} at {named}{Turn(angle.Value, sure)}{Alike(shaft)}",
                .. overChart.Verdict == Verdict.Fits ? Array.Empty<Sentence>()
                    : [$"where that angle has to stay, a double (constant-velocity) joint in place of {named}, rated for it by its maker; the joint at the other end then runs best at a small angle of its own"],
            ],
        });
    }

    /// <summary>What a joint runs best at, radians, at a shaft speed in rev/s, and surely may.</summary>
    internal static Window Best(Measured shaftSpeed)
        => new(JointAngleChart.NeedlesRoll, Math.Min(JointAngleChart.Smooth, JointAngleChart.Limit(shaftSpeed).Interval95.Low));

    /// <summary>What an angle that is known as well as this one has to read to be surely within; all of it where it is not known well enough for any.</summary>
    internal static Window Surely(Window best, Measured angle)
        => best.High - best.Low > 2 * angle.Expanded95 ? new(best.Low + angle.Expanded95, best.High - angle.Expanded95) : best;

    // Two joints of one piece turn evenly only where both work alike.
    private static string Alike(FittedShaft shaft) => shaft.Shaft.Pieces.Count == 1 ? Spoken(", and the same at its other joint") : "";

    private static string Turn(double angle, Window good)
        => angle > good.High ? Spoken($": turn or shim one of its two members by {Said.OrMore(angle - good.High, Units.Degree, 1)}")
            : angle < good.Low ? Spoken($": turn or shim one of its two members by {Said.OrMore(good.Low - angle, Units.Degree, 1)}")
            : "";

    private static IEnumerable<Missing> Lacking(FittedShaft shaft, FastestTurn? fastest)
    {
        if (shaft.Shaft.Joints is null)
            yield return new(Spoken("not all angles are measured"), Spoken("lay an angle gauge on the gearbox's output, each piece of the shaft and the pinion, the vehicle standing on its wheels"));
        if (fastest is null) yield return new(Spoken("its fastest turn is not known"), Spoken("enter the engine's redline"));
    }

    private static string Named(FittedShaft shaft, int joint)
    {
        var last = shaft.Shaft.Pieces.Count;
        var which = joint == 0 ? Spoken("front") : joint == last ? Spoken("rear") : last == 2 ? Spoken("middle") : $"{(joint == 1 ? Spoken("second") : Spoken("third"))}";
        return Spoken($"the {which} joint of the {shaft.Position.InWords()}");
    }
}
