using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Options;

/// <summary>What the checks of pull say within one narrow step of the curve: the findings that are certain all over it, and whether there are others.</summary>
internal readonly record struct PullVerdict(int Clash, int Open, int Watch, bool IsUnsure);

/// <summary>Top speed, hill and hill start of one gearbox and overdrive, computed once over the propshaft turns a metre that any axle and tyres can make.</summary>
/// <remarks>
/// <code>x = i_axle/C;   F(v) = T(v i x) · i x η · 2π;   the road load has neither axle nor tyre in it</code>
/// <para>i gear and transfer case; C rolling circumference, m. So all three are functions of x alone, and of the relative variance of x.</para>
/// <para>
/// The public checks are asked at each step's ends. A finding counts for the whole step if it is the same at both ends and one step further, with the least
/// and the most uncertainty that any axle and tyres have, and still if the value moved by as much again as it does from step to step. Where it
/// does not, the combination is asked for itself.
/// </para>
/// </remarks>
internal sealed class PullCurve
{
    /// <summary>The checks whose answer is read off the curve.</summary>
    public static readonly IReadOnlyList<ICheck> Asked = [new TopSpeedCheck(), new HillCheck(), new HillStartCheck()];

    private readonly int[] same;

    private PullCurve(PullVerdict[] steps)
    {
        Steps = steps;
        same = new int[steps.Length];
        for (var k = steps.Length - 1; k >= 0; k--) same[k] = k + 1 < steps.Length && steps[k] == steps[k + 1] ? same[k + 1] : k;
    }

    /// <summary>From the fewest turns a metre to the most; see <see cref="PullRange.StepOf"/>.</summary>
    public PullVerdict[] Steps { get; }

    /// <summary>What is certain all the way between two places; null where it changes, or is not certain.</summary>
    public PullVerdict? Throughout(double from, double to)
    {
        var (first, last) = (StepAt(from), StepAt(to));
        return same[first] >= last && !Steps[first].IsUnsure ? Steps[first] : null;
    }

    private int StepAt(double place) => Math.Clamp((int)place, 0, Steps.Length - 1);

    /// <param name="bare">The driveline with this gearbox and overdrive; axle and tyres are replaced.</param>
    /// <param name="goals">The wishes.</param>
    /// <param name="range">What axles and tyres can make.</param>
    public static PullCurve Of(Driveline bare, OwnersGoals goals, PullRange range)
    {
        var points = new IReadOnlyList<PullPoint>[range.Steps + 3];
        for (var k = 0; k < points.Length; k++) points[k] = At(bare, goals, range, range.At(k - 1));
        return new([.. Enumerable.Range(0, range.Steps).Select(k => Between(points.AsSpan(k, 4)))]);
    }

    private static List<PullPoint> At(Driveline bare, OwnersGoals goals, PullRange range, double turns)
    {
        // Without uncertainty of its own, but with its sensitivity remembered.
        var input = new Input(Spoken("propshaft turns a metre"), 0, new Evidence(Spoken("axle and tyres")));
        var whole = bare.With(bare.Transmission, bare.Overdrive, new("", new(Measured.From(turns, input), Source.Measured)), new("", new(1, Source.Measured), null));
        return [.. Asked.SelectMany(check => check.Look(whole, goals)).Select(finding => PullPoint.Of(finding, turns, input, range))];
    }

    private static PullVerdict Between(ReadOnlySpan<IReadOnlyList<PullPoint>> points)
    {
        var count = points[0].Count;
        foreach (var point in points)
        {
            if (point.Count != count) return new(0, 0, 0, IsUnsure: true);
        }

        var step = default(PullVerdict);
        for (var k = 0; k < count; k++)
        {
            step = PullPoint.Between(points[0][k], points[1][k], points[2][k], points[3][k]) switch
            {
                Verdict.Clash => step with { Clash = step.Clash + 1 },
                Verdict.Open => step with { Open = step.Open + 1 },
                Verdict.Watch => step with { Watch = step.Watch + 1 },
                Verdict.Fits => step,
                _ => step with { IsUnsure = true },
            };
        }

        return step;
    }
}

/// <summary>One finding at one point of the curve: its value with the least and the most half-width of its interval.</summary>
/// <param name="Limit">The least that is wanted; null where it cannot be said.</param>
internal readonly record struct PullPoint(double? Limit, double Value, double Least, double Most, bool MayClash)
{
    public static PullPoint Of(Finding finding, double turns, Input input, PullRange range)
    {
        if (finding is not { Value: { } value, Wanted: { } wanted }) return default;

        var (own, moved) = (value.StandardUncertainty, value.SensitivityTo(input) * turns);
        double Half(double spread, double factor) => factor * Math.Sqrt((own * own) + (moved * moved * spread));
        return new(
            wanted.Low, value.Value, Half(range.LeastSpread, StudentT.Normal975),
            Half(range.MostSpread, StudentT.Factor95(Math.Min(range.LeastFreedom, value.DegreesOfFreedom))), finding.LimitIsVerified);
    }

    /// <summary>The verdict that is certain from one inner point to the other; null where there is none.</summary>
    public static Verdict? Between(PullPoint before, PullPoint from, PullPoint to, PullPoint after)
    {
        var room = Math.Max(Math.Max(before.Gap(from), from.Gap(to)), to.Gap(after));
        var verdict = from.Certain(room);
        return verdict == to.Certain(room) && verdict == before.Certain(room) && verdict == after.Certain(room) ? verdict : null;
    }

    private double Gap(PullPoint other) => Math.Abs(Value - other.Value) + Math.Abs(Most - other.Most);

    private Verdict? Certain(double room)
        => Limit is not { } limit ? Verdict.Open
            : Value - room - Most >= limit ? Verdict.Fits
            : Value + room + Most < limit ? (MayClash ? Verdict.Clash : Verdict.Watch)
            : Value + room - Least < limit && (!MayClash || Value - room + Least >= limit) ? Verdict.Watch
            : null;
}
