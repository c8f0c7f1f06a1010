using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>An axle's teeth, counted more than once: counts that agree make the ratio exact.</summary>
public static class TeethCounts
{
    private const int Fewest = 2;

    /// <summary>What all counts say.</summary>
    /// <exception cref="RefusedException">Counted once only, or two counts differ.</exception>
    public static Teeth Agreed(IReadOnlyList<Teeth> counts)
    {
        if (counts.Count < Fewest) throw new RefusedException("teeth", Spoken("Count the teeth twice: two counts that agree make the ratio exact."), "41/10");
        var other = counts.Where(count => count != counts[0]).Select(count => (Teeth?)count).FirstOrDefault();
        return other is null ? counts[0] : throw new RefusedException("teeth", Spoken($"The counts differ, {counts[0]} and {other}: count until two agree."), "41/10");
    }
}
