using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Checks;

/// <summary>The tyres' circumference is measured where something hangs on it.</summary>
/// <remarks>
/// <code>share = Σ variance of the tyre's inputs / variance of what hangs on them</code>
/// <para>
/// Tyres of one marking differ, and the label knows nothing of load: the circumference is known to one and a half per cent at best. Verdict: watch where that is
/// more than half of what is uncertain in a cruise goal's engine speed, in what the speedometer shows, or in how the axles of a four-wheel drive match; fits where something else dominates, or where it was rolled out. A roll-out that no
/// tyre of that marking has, worn or new, is a watch: a turn miscounted changes every speed.
/// </para>
/// <para>Nothing is said where none of these can be computed: then nothing hangs on it. Source: JCGM 100:2008, 5.1.2; half is our own choice.</para>
/// </remarks>
internal sealed class LabelCheck : ICheck
{
    internal const double Dominant = 0.5;

    /// <summary>A worn tyre is as much smaller at most: 8 mm of tread on a small wheel, common practice, no source.</summary>
    internal const double MostWear = 0.03;

    public string Id => "label";

    public string Title => Spoken("Circumference from the label");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline.DrivingTyres is not { } tyres) yield break;

        if (tyres.RollingCircumference is not { } circumference)
        {
            yield return Say(Verdict.Open, Because.MissingInput, Spoken("The tyres' circumference is not known.")) with { Advice = [Spoken("roll the tyres out, or enter their size")] };
            yield break;
        }

        var shown = Said.Number(circumference.Value, Units.Metre);
        if (circumference.Source == Source.Measured) yield return OfRollOut(tyres.Size, circumference.Value, shown);
        if (circumference.Source == Source.Tag && Hardest(driveline, goals, circumference.Value) is var (what, share))
            yield return Judge(what, share, circumference.Value, shown);
    }

    private Finding OfRollOut(TyreSize? size, Measured rolled, SaidNumber shown)
    {
        if (size is null || WornOrNew(size) is var marked && !marked.Misses(rolled.Interval95))
            return Say(Verdict.Fits, Because.Inside, $"The tyres were rolled out: {shown}.") with { Value = rolled, Unit = Units.Metre };

        return this.Judged(new(
            [Position.Tyres], rolled, Units.Metre, marked, $"The tyres were rolled out: {shown}; tyres marked {size.Designation} roll {Said.Between(marked.Low, marked.High, Units.Metre, 2)}.",
            Spoken("the marking's dimensions, and wear by common practice"))
        {
            LimitIsVerified = false,
            Cures = [Spoken("count the turns of the roll-out again, and read the marking again")],
        });
    }

    private static Window WornOrNew(TyreSize size)
    {
        var made = size.RollingCircumference.Interval95;
        return new(made.Low * (1 - MostWear), made.High);
    }

    private Finding Judge(string what, double share, Measured circumference, SaidNumber shown)
    {
        var percent = Spoken($"{share * 100:0} %");
        var dominates = share > Dominant;
        return Say(
            dominates ? Verdict.Watch : Verdict.Fits,
            dominates ? Because.Uncertainty : Because.Inside,
            $"The circumference {shown} is only from the label; {(dominates ? Spoken("it is") : Spoken("that is no more than"))} {percent} of what is uncertain in {what}.") with
        {
            Value = circumference,
            Unit = Units.Metre,
            Advice = dominates ? [Spoken("roll the tyres out with the vehicle standing on them, over five turns or more")] : [],
            SettledBy = dominates ? Settling.BestStep(circumference) : null,
        };
    }

    // What hangs on the tyre the most; null where nothing can be computed.
    private static (string What, double Share)? Hardest(Driveline driveline, OwnersGoals goals, Measured circumference)
    {
        var tyre = circumference.Budget().Select(line => line.Input).ToHashSet();
        return HangingOnIt(driveline, goals)
            .Where(entry => entry.Result is { IsExact: false })
            .Select(entry => ((string, double)?)(entry.What, entry.Result!.Budget().Where(line => tyre.Contains(line.Input)).Sum(line => line.Share)))
            .MaxBy(entry => entry!.Value.Item2);
    }

    private static IEnumerable<(string What, Measured? Result)> HangingOnIt(Driveline driveline, OwnersGoals goals) =>
    [
        .. goals.Cruise.Select(goal => (Spoken($"the engine speed at {goal.Speed.InWords}"), CruiseCheck.EngineSpeed(driveline, goal))),
        (Spoken("what the speedometer shows"), SpeedometerCheck.Computed(driveline)?.Share),
        (Spoken("how the axles match"), FourWheelMatchCheck.AtSpeed(driveline)),
    ];

    private Finding Say(Verdict verdict, Because because, Sentence says)
        => this.Plain([Position.Tyres], verdict, because, says, Spoken("the uncertainty of what hangs on it"));
}
