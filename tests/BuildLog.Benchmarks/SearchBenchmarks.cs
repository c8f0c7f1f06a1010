using BenchmarkDotNet.Attributes;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;

namespace BuildLog.Benchmarks;

/// <summary>A search through ten gearboxes, 400 axle ratios and 500 sets of tyres, beside a plain loop over the public checks of one driveline; each figure is for one combination.</summary>
[MemoryDiagnoser]
public class SearchBenchmarks
{
    private const int Boxes = 10;
    private const int Axles = 400;
    private const int Sets = 500;
    private const int Combinations = Boxes * Axles * Sets;
    private const int Asked = 1000;

    private static readonly Driveline Truck = MeasuredTruck.Whole;

    private static readonly CandidateParts Shop = CandidateParts.InPlace(Truck) with
    {
        Gearboxes = [.. Enumerable.Range(0, Boxes).Select(Box)],
        Axles = [.. Enumerable.Range(0, Axles).Select(k => new Candidate<Axle>($"axle {k}", Truck.RearAxle! with { Ratio = new(2.5 + (0.01 * k), Source.TeethCounted) }, Pool.Listed))],
        Tyres = [.. Enumerable.Range(0, Sets).Select(k => new Candidate<TyreSet>($"set {k}", Truck.Tyres! with { RollingCircumference = new(2 + (0.001 * k), Source.Measured) }, Pool.Owned))],
    };

    [Benchmark(Baseline = true, OperationsPerInvoke = Asked)]
    public int PlainLoop()
    {
        var findings = 0;
        for (var k = 0; k < Asked; k++)
        {
            // Scattered over all lists, as the search goes through them.
            var at = (int)(k * 7919L * (Combinations / Asked) % Combinations);
            var whole = Truck with
            {
                Transmission = Shop.Gearboxes[at % Boxes].Part,
                RearAxle = Shop.Axles[at / Boxes % Axles].Part,
                Tyres = Shop.Tyres[at / Boxes / Axles].Part,
            };
            findings += SeparableChecks.Look(whole, MeasuredTruck.Goals).Count;
        }

        return findings;
    }

    [Benchmark(OperationsPerInvoke = Combinations)]
    public long OnOneCore() => OptionSearch.Run(Truck, MeasuredTruck.Goals, Shop, cores: 1).Tried;

    [Benchmark(OperationsPerInvoke = Combinations)]
    public long OnAllCores() => OptionSearch.Run(Truck, MeasuredTruck.Goals, Shop).Tried;

    private static Candidate<Transmission> Box(int k)
        => new($"box {k}", Truck.Transmission! with { Gears = [.. Truck.Transmission!.Gears.SkipLast(1), new("4", new(0.7 + (0.03 * k), Source.MakersData))] }, Pool.Owned);
}
