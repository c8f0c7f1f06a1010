using BenchmarkDotNet.Attributes;
using BuildLog.Gearing.Options;

namespace BuildLog.Benchmarks.Search;

/// <summary>The big search beside a plain loop over the public checks of one driveline; each figure is for one combination, but for what is made ready once.</summary>
[MemoryDiagnoser]
public class SearchBenchmarks
{
    private const int Asked = 1000;

    private SeparableSearch? ready;

    [Benchmark(Baseline = true, OperationsPerInvoke = Asked)]
    public int PlainLoop()
    {
        var findings = 0;
        for (var k = 0; k < Asked; k++)
        {
            var whole = BigSearch.Whole((int)(k * 7919L * (BigSearch.Combinations / Asked) % BigSearch.Combinations));
            findings += SeparableChecks.Look(whole, MeasuredTruck.Goals).Count;
        }

        return findings;
    }

    [GlobalSetup]
    public void MakeReady() => ready = new(BigSearch.Truck, MeasuredTruck.Goals, BigSearch.Parts);

    /// <summary>The judging alone: curves of pull and columns of tyres are there already.</summary>
    [Benchmark(OperationsPerInvoke = BigSearch.Combinations)]
    public int SeparablyOnOneCore() => ready!.Run(null, 1, CancellationToken.None).Members.Count;

    [Benchmark(OperationsPerInvoke = BigSearch.Combinations)]
    public int SeparablyOnAllCores() => ready!.Run(null, Environment.ProcessorCount, CancellationToken.None).Members.Count;

    /// <summary>Curves and columns; this takes as long for one axle as for any number of them.</summary>
    [Benchmark]
    public long MakingReady() => new SeparableSearch(BigSearch.Truck, MeasuredTruck.Goals, BigSearch.Parts).Rows;

    /// <summary>All of it, the front judged by every check.</summary>
    [Benchmark(OperationsPerInvoke = BigSearch.Combinations)]
    public long OnOneCore() => OptionSearch.Run(BigSearch.Truck, MeasuredTruck.Goals, BigSearch.Parts, cores: 1).Tried;

    [Benchmark(OperationsPerInvoke = BigSearch.Combinations)]
    public long OnAllCores() => OptionSearch.Run(BigSearch.Truck, MeasuredTruck.Goals, BigSearch.Parts).Tried;
}
