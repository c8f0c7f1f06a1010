using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Checks;

/// <summary>The engine's own speed at a cruise, converter slip and all.</summary>
internal static class Cruising
{
    /// <summary>rev/s; null while a part or a number is missing.</summary>
    public static Measured? EngineSpeed(Driveline driveline, CruiseGoal goal)
        => CruiseCheck.EngineSpeed(driveline, goal) is { } locked ? locked / (1 - (driveline.Transmission?.Converter?.CruiseSlip ?? 0)) : null;

    /// <summary>What each part would have to be for other engine speeds at that cruise.</summary>
    public static IReadOnlyList<PartWindow> Windows(Driveline driveline, CruiseGoal goal, Window engineSpeeds)
    {
        var kept = 1 - (driveline.Transmission?.Converter?.CruiseSlip.Value ?? 0);
        return CruiseCheck.Windows(driveline, goal with { Wanted = new(engineSpeeds.Low * kept, engineSpeeds.High * kept) });
    }
}
