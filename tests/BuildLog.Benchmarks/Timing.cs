using System.Diagnostics;

namespace BuildLog.Benchmarks;

/// <summary>What the runs that go without the runner measure with.</summary>
internal static class Timing
{
    /// <summary>By the clock.</summary>
    public static double Milliseconds(Action act)
    {
        var watch = Stopwatch.StartNew();
        act();
        return watch.Elapsed.TotalMilliseconds;
    }

    /// <summary>Of the processor, all threads together: other programs do not count.</summary>
    public static double ProcessorMilliseconds(Action act)
    {
        var before = Environment.CpuUsage.TotalTime;
        act();
        return (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
    }

    public static double Median(IReadOnlyCollection<double> times) => times.Order().ElementAt(times.Count / 2);
}
