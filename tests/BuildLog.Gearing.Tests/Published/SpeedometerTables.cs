using BuildLog.Gearing.Speedometers;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>What speedometers may show and do show in print.</summary>
internal static class SpeedometerTables
{
    public static PublishedSet Law() => new("Speeds that may be shown", "UN Regulation No. 39 as quoted in the press, ADR 18/03 fact sheet", Standing.Read,
    [
        .. new[] { (50, 59), (70, 81), (90, 103), (110, 125), (130, 147), (100, 114) }.SelectMany(row => new[]
        {
            new Figure($"{row.Item1} km/h, least", row.Item1, SpeedometerLaw.Shown(row.Item1).Low, 1e-9),
            new Figure($"{row.Item1} km/h, most", row.Item2, SpeedometerLaw.Shown(row.Item1).High, 1e-9),
        }),
    ]);

    public static PublishedSet Errors() => new("Errors of speedometer and odometer", "a club engineer's article, trade forums", Standing.Read,
    [
        Figure.ToPlaces("gets 1336.6, wants 1325: % over", 0.9, 1, 100 * Reading.Of(1336.6, 1325).OdometerError.Value),
        Figure.ToPlaces("gets 1336.6, wants 1350: % under", -1.0, 1, 100 * Reading.Of(1336.6, 1350).OdometerError.Value),
        Figure.ToPlaces("gets 908, wants 920: % low", -1.3, 1, 100 * Reading.Of(908, 920).OdometerError.Value),
        Figure.ToPlaces("19.5 read for 20: %", -2.5, 1, 100 * Reading.OdometerObserved(19.5, 20).OdometerError.Value),
    ]);
}
