using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Options;

/// <summary>The checks whose answer for a combination follows from the answers for its parts, so that millions are judged at once.</summary>
/// <remarks>
/// Cruise and speedometer: the number is a product of one factor a part. Overall low: gearbox and axle. Gear steps: gearbox and overdrive. Top speed by gear, hill and hill start: read off a curve over axle against
/// tyre, one for each gearbox and overdrive (<see cref="PullCurve"/>). The tyres' own, load and speed and size: tyres alone, their speed by the wishes, as what is reached takes a gearbox and an axle. All others wait for the survivors.
/// </remarks>
internal static class SeparableChecks
{
    public static readonly ICheck Cruise = new CruiseCheck();

    public static readonly ICheck Speedometer = new SpeedometerCheck();

    public static readonly ICheck OverallLow = new OverallLowCheck();

    public static readonly ICheck GearSteps = new GearStepsCheck();

    /// <summary>Top speed, hill and hill start.</summary>
    public static readonly IReadOnlyList<ICheck> OfPull = PullCurve.Asked;

    public static readonly IReadOnlyList<ICheck> OfTyres =
        [new RimWidthCheck(), new TyreLoadCheck(), TyreSpeedCheck.ByWishes, new TyreDiameterCheck(), new TyreWidthCheck()];

    public static readonly IReadOnlyList<ICheck> All = [Cruise, Speedometer, OverallLow, GearSteps, .. OfPull, .. OfTyres];

    /// <summary>What they say of one driveline, asked one by one.</summary>
    public static IReadOnlyList<Finding> Look(Driveline driveline, OwnersGoals goals) => [.. All.SelectMany(check => check.Look(driveline, goals))];

    /// <summary>How far a cruise lies from what is wanted, as a share of it; below an "at most" it is no distance.</summary>
    public static double Distance(double engineSpeed, CruiseGoal goal)
        => double.IsFinite(goal.Wanted.Low)
            ? Math.Abs((engineSpeed / goal.EngineSpeed.Value) - 1)
            : Math.Max(0, (engineSpeed / goal.EngineSpeed.Value) - 1);

    /// <summary>The furthest of all goals; infinite where one cannot be said.</summary>
    public static double Distance(Driveline driveline, OwnersGoals goals)
        => goals.Cruise.Select(goal => CruiseCheck.EngineSpeed(driveline, goal) is { } n ? Distance(n.Value, goal) : double.PositiveInfinity).DefaultIfEmpty(0).Max();
}
