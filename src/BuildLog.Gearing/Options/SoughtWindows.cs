using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Options;

/// <summary>Windows that no finding carries, because they concern a part that one would have to look for: an overdrive, a tyre below a limit, a first gear that pulls away.</summary>
internal static class SoughtWindows
{
    public static IEnumerable<Wish> Of(Driveline driveline, OwnersGoals goals, IReadOnlyList<Finding> findings)
    {
        // The cruise findings come in the order of the goals.
        var cruise = findings.Where(finding => finding.Check == "cruise").ToList();
        foreach (var (goal, finding) in goals.Cruise.Zip(cruise))
        {
            if (Overdrive(driveline, goal) is { } window) yield return new(finding, window);
        }

        foreach (var finding in findings.Where(finding => finding.Check == "hill-start").Take(1))
        {
            if (FirstGear(driveline, goals) is { } window) yield return new(finding, window);
        }

        foreach (var finding in findings.Where(finding => finding.Check == "tyre-diameter").Take(1))
        {
            if (Circumference(driveline, goals) is { } window) yield return new(finding, window);
        }
    }

    // v · i_top · i_transfer · i_axle / C is what the overdrive unit multiplies.
    private static PartWindow? Overdrive(Driveline driveline, CruiseGoal goal)
    {
        var bare = driveline with { Overdrive = null };
        return goal.Gear is null && CruiseCheck.EngineSpeed(bare, goal) is { } n
            ? PartWindow.Proportional(Position.Overdrive, Spoken("overdrive ratio"), Units.One, n, goal.Wanted)
            : null;
    }

    /// <summary>What the hill to start on leaves of the lowest gear; null where the wheels would spin before it is climbed, whatever the gear.</summary>
    /// <remarks><code>i · F / (i_now · m g (sin θ + c cos θ)) ≥ 1</code>F as it pulls away now, see <see cref="HillStart"/>.</remarks>
    private static PartWindow? FirstGear(Driveline driveline, OwnersGoals goals)
    {
        if (goals.HillStart is not { } goal || HillStart.Of(driveline) is not { } start || (start.EndedByGrip && start.Gradient.Value < goal.Gradient.Value)) return null;

        var others = start.Force / (start.Pull.Resistance.At(0, goal.Gradient.Value) * driveline.Transmission!.First!.Ratio.Value);
        return PartWindow.Proportional(Position.Transmission, Spoken("first gear"), Units.One, others, Window.AtLeast(1));
    }

    /// <summary>What the limit of diameter leaves of the rolling circumference; null without a limit, or where the marking of the tyres is not known.</summary>
    /// <remarks>D / C_rolling = 1/(π k), and tyres of one marking leave D by the label's spread.</remarks>
    public static PartWindow? Circumference(Driveline driveline, OwnersGoals goals)
    {
        if (goals.TyreDiameter is not { } limit || driveline.Tyres?.Size is not { } size) return null;

        var others = size.FreeCircumferenceAsLabelled / (LoadedFactor.For(size.Construction) * (Math.PI * size.FreeCircumference));
        return PartWindow.Proportional(Position.Tyres, Spoken("tyre rolling circumference"), Units.Metre, others, Window.AtMost(limit.Most.Value));
    }
}
