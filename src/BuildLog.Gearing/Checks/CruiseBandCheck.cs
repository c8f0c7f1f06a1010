using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>The cruise lies in the lower part of the engine's torque band.</summary>
/// <remarks>
/// <code>0.60 n_T ≤ n ≤ 0.95 n_T</code>
/// <para>n engine speed at the cruise, converter slip included; n_T engine speed of peak torque.</para>
/// <para>
/// Cures keep to the cruise goal: they are what meets both; where nothing does, that is said, as no part can help.
/// </para>
/// <para>
/// Limit: common practice, for big slow engines; it warns and never clashes. A small engine that cruises above its torque peak is noisy and thirsty, not
/// wrong. Needs a cruise goal and the engine's torque; says nothing without them.
/// </para>
/// </remarks>
internal sealed class CruiseBandCheck : ICheck
{
    internal const double Low = 0.60;
    internal const double High = 0.95;

    public string Id => "cruise-band";

    public string Title => Spoken("Cruise in the torque band");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline.Engine?.Torque is not { } torque) yield break;

        var rpm = Units.RevolutionPerMinute;
        var peak = torque.StrongestPoint.EngineSpeed;
        var band = new Window(Low * peak, High * peak);
        foreach (var goal in goals.Cruise)
        {
            if (CruiseCheck.EngineSpeed(driveline, goal) is not { } n) continue;

            var both = band.And(goal.Wanted);
            yield return this.Judged(new(
                [Position.Engine, driveline.DrivingPosition, Position.Tyres], n, rpm, band,
                $"At {goal.Speed.InWords} the engine turns {Said.Number(n, rpm)}; its torque peaks at {rpm.FromBase(peak):0} rev/min, and a cruise does best at {band.InWords(rpm)}.{(both.IsEmpty ? NoneMeetsBoth(driveline, goal, band) : "")}",
                Spoken("common practice: 0.60 to 0.95 of the torque peak's engine speed"))
            {
                LimitIsVerified = false,
                Cures = both.IsEmpty ? [.. Within(driveline, goal with { Wanted = band }), .. goal.Wanted.Contains(n.Interval95) ? Peaks(n.Interval95.Low, n.Interval95.High) : Peaks(goal.Wanted.Low, goal.Wanted.High)] : [],
                Windows = both.IsEmpty ? [] : CruiseCheck.Windows(driveline, goal with { Wanted = both }),
            });
        }
    }

    // The goal gives way to the engine.
    private static IEnumerable<Sentence> Within(Driveline driveline, CruiseGoal goal)
        => CruiseCheck.Windows(driveline, goal).Select(window => window.AsMade).OfType<PartWindow>().Take(1)
            .Select(window => Said.As($"{window.BestInWords(window.Unit)}, with a cruise goal of {goal.Wanted.InWords(Units.RevolutionPerMinute)}"));

    // Where another engine's torque would have to peak for all of these engine speeds to lie in its band.
    private static IEnumerable<Sentence> Peaks(double slowest, double fastest)
    {
        var peak = new Window(fastest / High, slowest / Low);
        if (!peak.IsEmpty && peak.High > 0) yield return Spoken($"an engine whose torque peaks at {peak.InWords(Units.RevolutionPerMinute)}");
    }

    // Goal and band ask for one engine speed at one road speed, so what no axle ratio meets no other part does either.
    private static string NoneMeetsBoth(Driveline driveline, CruiseGoal goal, Window band)
    {
        Window Axle(Window engineSpeeds) => CruiseCheck.Windows(driveline, goal with { Wanted = engineSpeeds })[0].Window;

        var needed = Axle(goal.Wanted).InWords(Units.One);
        return goal.Wanted.High < band.Low
            ? Spoken($" No axle ratio meets both: the goal needs {needed}, the torque band begins at {Rounded.Fixed(Axle(band).Low, 2)}.")
            : Spoken($" No axle ratio meets both: the goal needs {needed}, the torque band ends at {Rounded.Fixed(Axle(band).High, 2)}.");
    }
}
