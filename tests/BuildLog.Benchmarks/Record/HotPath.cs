namespace BuildLog.Benchmarks.Record;

/// <summary>One thing the record does, beside the same rows read or written by hand.</summary>
/// <param name="What">In a few words.</param>
/// <param name="Record">Through the record's own door; the round says which vehicle.</param>
/// <param name="ByHand">The same by hand.</param>
/// <param name="Rounds">How often, after <see cref="WarmUp"/> rounds that do not count.</param>
internal sealed record HotPath(string What, Action<int> Record, Action<int> ByHand, int Rounds = 60)
{
    private int WarmUp => Math.Min(10, Rounds / 2);

    /// <summary>Medians in milliseconds.</summary>
    public (double Record, double ByHand) Measure()
    {
        var (ours, theirs) = (new List<double>(), new List<double>());
        for (var k = 0; k < Rounds + WarmUp; k++)
        {
            // One after the other on the same vehicle; who goes first finds colder pages, so they take turns.
            var round = k;
            var (first, second) = k % 2 == 0 ? (Record, ByHand) : (ByHand, Record);
            var (a, b) = (Timing.Milliseconds(() => first(round)), Timing.Milliseconds(() => second(round)));
            if (k < WarmUp) continue;

            ours.Add(k % 2 == 0 ? a : b);
            theirs.Add(k % 2 == 0 ? b : a);
        }

        return (Timing.Median(ours), Timing.Median(theirs));
    }
}
