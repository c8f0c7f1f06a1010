using System.Diagnostics;
using System.Globalization;
using BuildLog.Gearing.Options;

namespace BuildLog.Benchmarks.Search;

/// <summary>The big search by the clock and by what it takes of the processor, which others on the machine do not change much.</summary>
internal static class SearchRun
{
    private const int Rounds = 25;

    public static int Of()
    {
        var ready = new SeparableSearch(BigSearch.Truck, MeasuredTruck.Goals, BigSearch.Parts);
        foreach (var cores in (int[])[1, Environment.ProcessorCount])
        {
            Print($"separably, {cores} core(s)", () => ready.Run(null, cores, CancellationToken.None).Members.Count);
            Print($"whole answer, {cores} core(s)", () => OptionSearch.Run(BigSearch.Truck, MeasuredTruck.Goals, BigSearch.Parts, cores: cores).JudgedFully);
        }

        return 0;
    }

    private static void Print(string what, Func<int> search)
    {
        var left = search();
        var (clock, processor) = (new List<double>(), new List<double>());
        for (var round = 0; round < Rounds; round++)
        {
            var (began, used) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
            _ = search();
            clock.Add(Stopwatch.GetElapsedTime(began).TotalMilliseconds);
            processor.Add((Environment.CpuUsage.TotalTime - used).TotalMilliseconds);
        }

        clock.Sort();
        processor.Sort();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{what,-26} clock {clock[0]:0} ms at least, {clock[Rounds / 2]:0} ms median: {BigSearch.Combinations / clock[0] / 1000:0} and {BigSearch.Combinations / clock[Rounds / 2] / 1000:0} million a second; processor {processor[Rounds / 2]:0} ms median; {left} left"));
    }
}
