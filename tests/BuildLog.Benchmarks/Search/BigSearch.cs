using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;

namespace BuildLog.Benchmarks.Search;

/// <summary>Ten gearboxes, 400 axle ratios and 500 sets of tyres for the truck of all benchmarks; what is fitted is the first of each, all others have a price, so that the front is no single point.</summary>
internal static class BigSearch
{
    public const int Boxes = 10;
    public const int Axles = 400;
    public const int Sets = 500;
    public const int Combinations = Boxes * Axles * Sets;

    public static readonly Driveline Truck = MeasuredTruck.Whole;

    public static readonly CandidateParts Parts = InPlaceAnd(CandidateParts.InPlace(Truck));

    /// <summary>One of them as the record would hand it over; the numbers are scattered over all lists, as the search goes through them.</summary>
    public static Driveline Whole(int number) => Truck with
    {
        Transmission = Parts.Gearboxes[number % Boxes].Part,
        RearAxle = Parts.Axles[number / Boxes % Axles].Part,
        Tyres = Parts.Tyres[number / Boxes / Axles].Part,
    };

    private static CandidateParts InPlaceAnd(CandidateParts here) => here with
    {
        Gearboxes = [.. here.Gearboxes, .. Enumerable.Range(1, Boxes - 1).Select(k => Offered($"box {k}", Box(0.7 + (0.03 * k)), k, 400))],
        Axles = [.. here.Axles, .. Enumerable.Range(1, Axles - 1).Select(k => Offered($"axle {k}", Truck.RearAxle! with { Ratio = new(2.5 + (0.01 * k), Source.TeethCounted) }, k, 200))],
        Tyres = [.. here.Tyres, .. Enumerable.Range(1, Sets - 1).Select(k => Offered($"set {k}", Truck.Tyres! with { RollingCircumference = new(2 + (0.001 * k), Source.Measured) }, k, 300))],
    };

    // Prices in no order, from the least to twice as much.
    private static Candidate<T> Offered<T>(string name, T part, int k, int least)
        where T : class
        => new(name, part, Pool.Offered) { Price = new(100 * (least + (k * 7919L % least)), "EUR") };

    private static Transmission Box(double top) => Truck.Transmission! with { Gears = [.. Truck.Transmission!.Gears.SkipLast(1), new("4", new(top, Source.MakersData))] };
}
