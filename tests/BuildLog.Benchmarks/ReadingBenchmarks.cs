using System.Globalization;
using BenchmarkDotNet.Attributes;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Benchmarks;

/// <summary>What it takes to read what somebody typed, beside the runtime's own reading of a number.</summary>
[MemoryDiagnoser]
public class ReadingBenchmarks
{
    [Benchmark(Baseline = true)]
    public double PlainNumber() => double.Parse("2143.5", CultureInfo.InvariantCulture);

    [Benchmark]
    public Parsed<Typed> Quantity() => QuantityText.Read("2143.5 mm", Kind.Length);

    [Benchmark]
    public Parsed<Typed> FeetAndInches() => QuantityText.Read("7' 0 3/8\"", Kind.Length);

    [Benchmark]
    public Parsed<TyreSize> MetricTyre() => TyreSizeText.Read("P235/75R15 105S");

    [Benchmark]
    public Parsed<TyreSize> FlotationTyre() => TyreSizeText.Read("31x10.50R15LT 109Q");
}
