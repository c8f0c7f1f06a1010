using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RoadLoad;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>Crawl ratios in print.</summary>
internal static class CrawlRatios
{
    public static PublishedSet Printed() => new("Overall low ratio", "trade press", Standing.Read,
    [
        Figure.ToPlaces("first 6.32, low 2.72, axle 4.56", 78.39, 2, Overall(6.32, 2.72)),
        Figure.ToPlaces("the same with another 4:1 box in front", 313.55, 2, Overall(6.32 * 4, 2.72)),
    ]);

    private static double Overall(double first, double low) => LowRange.OverallRatio(new Driveline
    {
        Transmission = new("box", [new("1", new(first, Source.MakersData))]),
        TransferCase = new("case", null, new(low, Source.MakersData)),
        RearAxle = new("axle", new(4.56, Source.MakersData)),
    })!.Value;
}
