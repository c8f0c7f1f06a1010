using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;

namespace BuildLog.Tui.Bench;

/// <summary>What a bench begins with, in its order, said behind what has just been done: nobody should have to know the way.</summary>
internal static class NextStep
{
    /// <returns>A short sentence with its key; null where the beginning is behind.</returns>
    public static string? Of(VehicleOnBench bench)
    {
        if (Missing(bench.Driveline) is { } part) return Spoken($"Next: f fits the {part.InWords()}.");
        // A number that the driveline lacks altogether comes before what it is judged against, one that somebody only says behind it.
        var ratio = (bench.Driveline.RearAxle ?? bench.Driveline.FrontAxle)?.Ratio;
        if (ratio is null) return Spoken("Next: t counts the axle's turns.");
        if (bench.Driveline.DrivingTyres?.RollingCircumference is null) return Spoken("Next: r rolls the tyre out.");
        if (bench.Goals.Cruise.Count == 0) return Spoken("Next: g sets the goal.");
        if (ratio is not { Source: Gearing.Measurements.Source.Measured or Gearing.Measurements.Source.TeethCounted }) return Spoken("Next: t counts the axle's turns.");
        return bench.Findings.Any(finding => finding.Verdict == Verdict.Clash) ? Spoken("Next: 0 shows ways out.") : null;
    }

    /// <summary>The part the driveline cannot do without and has not got; null for none.</summary>
    public static Position? Missing(Driveline driveline)
        => driveline.Engine is null ? Position.Engine
            : driveline.Transmission is null ? Position.Transmission
            : driveline.RearAxle is null && driveline.FrontAxle is null ? Position.RearAxle
            : driveline.Tyres is null ? Position.Tyres
            : null;
}
