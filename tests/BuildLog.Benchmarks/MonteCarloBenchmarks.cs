using BenchmarkDotNet.Attributes;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Benchmarks;

/// <summary>A million draws of a cruise engine speed, beside the same number of draws in a bare loop.</summary>
[MemoryDiagnoser]
public class MonteCarloBenchmarks
{
    private const int Trials = 1_000_000;

    private readonly Measured cruise = CruiseCheck.EngineSpeed(MeasuredTruck.Whole, MeasuredTruck.Goals.Cruise[0])!;

    // Four rectangular inputs, one formula, kept and sorted.
    [Benchmark(Baseline = true)]
    public double BareLoop()
    {
        var random = new Random(1);
        var drawn = new double[Trials];
        for (var k = 0; k < Trials; k++)
            drawn[k] = 25 * 2 * (41 + Within(random, 0.125)) / (20 + Within(random, 0.02)) / ((11.3 + Within(random, 0.002)) / (5 + Within(random, 0.01)));

        Array.Sort(drawn);
        return drawn[Trials / 2];
    }

    [Benchmark]
    public MonteCarlo? MillionTrials() => MonteCarlo.OfTrials(cruise, 1, Trials);

    [Benchmark]
    public Validation? Adaptive() => Validation.Of(cruise, 1);

#pragma warning disable CA5394 // Nothing secret is drawn.
    private static double Within(Random random, double halfWidth) => ((2 * random.NextDouble()) - 1) * halfWidth;
#pragma warning restore CA5394
}
