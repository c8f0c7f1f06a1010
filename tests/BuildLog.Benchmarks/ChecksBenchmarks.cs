using BenchmarkDotNet.Attributes;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;

namespace BuildLog.Benchmarks;

/// <summary>What a look at a driveline costs, beside the one division that it is about.</summary>
[MemoryDiagnoser]
public class ChecksBenchmarks
{
    // Those that search for a root or walk a curve are left out: the hill, top speed, and what is judged by it.
    private static readonly ICheck[] ClosedForm = [.. AllChecks.List.Where(check => check.Id is not ("hill" or "top-speed" or "top-gear" or "hill-start" or "lugging"))];

    private static readonly ICheck[] Matings =
    [
        .. AllChecks.List.Where(check => check is MatingCheck or ClutchCheck or PilotCheck or ShiftLinkageCheck or PinionAngleCheck or PerchesCheck or ParkingBrakeCheck or NotLookedAtCheck),
    ];

    private readonly double v = 25, gear = 1, axle = 4.1, circumference = 2.26;

    /// <summary>Every check has something to say of the truck, but for those that speak only where something is wrong or lacking.</summary>
    [GlobalSetup]
    public void AllSpeak()
    {
        var silent = AllChecks.List.Where(check => !Look(check).Any()).Select(check => check.Id).ToList();
        if (silent is not ["engine-range", "rear-tyres", "numbers-agree", "not-looked-at"]) throw new InvalidOperationException($"The truck leaves these without a word: {string.Join(", ", silent)}.");
    }

    [Benchmark(Baseline = true)]
    public double InnerRelation() => v * gear * axle / circumference;

    [Benchmark]
    public Measured? CruiseEngineSpeed() => CruiseCheck.EngineSpeed(MeasuredTruck.Whole, MeasuredTruck.Goals.Cruise[0]);

    /// <summary>Those that a search asks of every combination.</summary>
    [Benchmark]
    public int Separable() => SeparableChecks.Look(MeasuredTruck.Whole, MeasuredTruck.Goals).Count;

    [Benchmark]
    public int MatingChecks() => Matings.Sum(check => Look(check).Count());

    [Benchmark]
    public int ClosedFormChecks() => ClosedForm.Sum(check => Look(check).Count());

    [Benchmark]
    public int EveryCheck() => AllChecks.Look(MeasuredTruck.Whole, MeasuredTruck.Goals).Count;

    private static IEnumerable<Finding> Look(ICheck check) => check.Look(MeasuredTruck.Whole, MeasuredTruck.Goals);
}
