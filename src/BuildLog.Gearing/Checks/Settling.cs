using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Checks;

/// <summary>Which measurement would let a watch become a fits or a clash.</summary>
/// <remarks>
/// The evidence that dominates the budget is made better until t·u is less than the distance d to the limit:
/// u_wanted = √((d/t)² − u_others²), so it has to shrink by u_dominant / u_wanted. Where the others alone are too coarse, it says so.
/// </remarks>
public static class Settling
{
    /// <summary>What to do at the bench, as a clause after "to settle it,"; null where the dominant evidence names no way.</summary>
    public static string? Of(Measured value, Window wanted)
    {
        if (Dominant(value) is not { Evidence.Settle: { } settle } dominant) return null;

        var allowed = Math.Abs(value.Value - wanted.NearestLimit(value.Value)) / value.CoverageFactor;
        var others = (value.StandardUncertainty * value.StandardUncertainty) - dominant.Variance;
        var room = (allowed * allowed) - others;
        if (room <= 0) return Spoken($"{settle(2)}; that alone would narrow it, not settle it");

        // A little more than enough, so that the result is not on the edge again.
        return settle(Math.Sqrt(dominant.Variance / room) * 1.05);
    }

    /// <summary>What to measure better first.</summary>
    public static string? BestStep(Measured value) => Dominant(value)?.Evidence.Settle?.Invoke(2);

    private static Dominance? Dominant(Measured value)
        => value.Budget()
            .GroupBy(line => line.Input.Evidence)
            .Select(group => new Dominance(group.Key, group.Sum(line => line.Contribution * line.Contribution)))
            .MaxBy(dominance => dominance.Variance);

    private sealed record Dominance(Evidence Evidence, double Variance);
}
