using System.Diagnostics;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Options;

namespace BuildLog.Benchmarks;

/// <summary><c>-- checks</c>: a look at the truck of all benchmarks, whole and check by check, beside the separable checks alone; the dearest first.</summary>
internal static class ChecksRun
{
    private const int Rounds = 15;
    private const int Times = 200;

    public static int Of()
    {
        // Until the runtime has compiled them at its best, the first would be charged for it.
        for (var began = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(began).TotalSeconds < 3;) _ = AllChecks.Look(MeasuredTruck.Whole, MeasuredTruck.Goals).Count + SeparableChecks.Look(MeasuredTruck.Whole, MeasuredTruck.Goals).Count;

        var separable = Microseconds(() => SeparableChecks.Look(MeasuredTruck.Whole, MeasuredTruck.Goals).Count);
        Print("the separable checks", separable, separable);
        Print("every check", Microseconds(() => AllChecks.Look(MeasuredTruck.Whole, MeasuredTruck.Goals).Count), separable);
        foreach (var (id, time) in AllChecks.List.Select(check => (check.Id, Microseconds(() => check.Look(MeasuredTruck.Whole, MeasuredTruck.Goals).Count()))).OrderByDescending(check => check.Item2))
            Print(id, time, separable);
        return 0;
    }

    private static void Print(string what, (double Least, double Bytes) of, (double Least, double Bytes) baseline)
        => Console.WriteLine(FormattableString.Invariant($"{what,-24} {of.Least,8:0.0} µs {of.Bytes / 1000,8:0.0} kB {of.Least / baseline.Least,6:0.00} times the separable"));

    private static (double Least, double Bytes) Microseconds(Func<int> look)
    {
        var said = 0;
        var times = new List<double>();
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var round = 0; round < Rounds; round++)
        {
            times.Add(Timing.Milliseconds(() =>
            {
                for (var k = 0; k < Times; k++) said += look();
            }));
        }

        if (said < 0) throw new InvalidOperationException("Nothing was looked at.");
        return (1000 * times.Min() / Times, (GC.GetAllocatedBytesForCurrentThread() - before) / (double)(Rounds * Times));
    }
}
