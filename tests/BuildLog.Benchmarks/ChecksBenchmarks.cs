using BenchmarkDotNet.Attributes;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Benchmarks;

/// <summary>What a look at a driveline costs, beside the one division that it is about.</summary>
[MemoryDiagnoser]
public class ChecksBenchmarks
{
    // Those that search for a root or walk a curve are left out: the hill, top speed, and what is judged by it.
    private static readonly ICheck[] ClosedForm = [.. AllChecks.List.Where(check => check.Id is not ("hill" or "top-speed" or "top-gear" or "hill-start" or "lugging"))];

    private readonly double v = 25, gear = 1, axle = 4.1, circumference = 2.26;

    [Benchmark(Baseline = true)]
    public double InnerRelation() => v * gear * axle / circumference;

    [Benchmark]
    public Measured? CruiseEngineSpeed() => CruiseCheck.EngineSpeed(MeasuredTruck.Whole, MeasuredTruck.Goals.Cruise[0]);

    [Benchmark]
    public int ClosedFormChecks() => ClosedForm.Sum(check => check.Look(MeasuredTruck.Whole, MeasuredTruck.Goals).Count());

    [Benchmark]
    public int EveryCheck() => AllChecks.Look(MeasuredTruck.Whole, MeasuredTruck.Goals).Count;
}
