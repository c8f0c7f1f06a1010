namespace BuildLog.Gearing.Options;

/// <summary>Gear sets that gearboxes are commonly sold with, as numbers alone.</summary>
/// <remarks>From memory, common practice in the trade, no source: they are candidates, likely ones to look for, and decide no finding. A box that is bought is counted.</remarks>
public static class ListedGears
{
    /// <summary>Three to six gears, wide and close; what has fewer gears comes first.</summary>
    public static readonly IReadOnlyList<string> WithClutch =
    [
        "2.99 1.75 1.00",
        "3.65 2.14 1.37 1.00", "3.50 2.21 1.43 1.00", "2.64 1.61 1.23 1.00", "2.52 1.88 1.46 1.00", "2.20 1.64 1.28 1.00", "6.68 3.34 1.79 1.00",
        "3.65 2.02 1.37 1.00 0.82", "3.36 2.09 1.47 1.00 0.80", "2.95 1.94 1.34 1.00 0.73", "3.35 1.93 1.29 1.00 0.68", "2.95 1.94 1.34 1.00 0.63", "5.61 3.04 1.67 1.00 0.75",
        "2.97 2.07 1.43 1.00 0.80 0.62", "2.66 1.78 1.30 1.00 0.74 0.50",
    ];

    /// <summary>Three to six gears behind a converter.</summary>
    public static readonly IReadOnlyList<string> Automatic =
    [
        "2.45 1.45 1.00", "2.48 1.48 1.00",
        "2.40 1.47 1.00 0.67", "2.84 1.55 1.00 0.70", "3.06 1.63 1.00 0.70", "2.80 1.54 1.00 0.75",
        "4.17 2.34 1.52 1.14 0.87 0.69",
    ];
}
