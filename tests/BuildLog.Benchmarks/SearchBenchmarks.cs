using BenchmarkDotNet.Attributes;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Benchmarks;

/// <summary>A search through axles and tyres, beside a bare loop that divides as often.</summary>
[MemoryDiagnoser]
public class SearchBenchmarks
{
    private const int Sets = 1000;

    private static readonly CandidateParts Shop = CandidateParts.InPlace(MeasuredTruck.Whole) with
    {
        Axles = [.. ListedRatios.Common.Select(teeth => new Candidate<Axle>(teeth.ToString(), MeasuredTruck.Whole.RearAxle! with { Ratio = new(teeth.ToMeasured(), Source.TeethCounted) }, Pool.Listed))],
        Tyres = [.. Enumerable.Range(0, Sets).Select(k => new Candidate<TyreSet>($"set {k}", MeasuredTruck.Whole.Tyres! with { RollingCircumference = new(2 + (0.0005 * k), Source.Measured) }, Pool.Owned))],
    };

    [Benchmark(Baseline = true)]
    public int BareLoop()
    {
        var within = 0;
        foreach (var axle in Shop.Axles)
        {
            foreach (var tyres in Shop.Tyres)
            {
                if (25 * axle.Part!.Ratio!.Value.Value / tyres.Part!.RollingCircumference!.Value.Value is > 42 and < 48) within++;
            }
        }

        return within;
    }

    [Benchmark]
    public long Search() => OptionSearch.Run(MeasuredTruck.Whole, MeasuredTruck.Goals, Shop, cores: 1).Tried;
}
