using BuildLog.Gearing.Drivelines;

namespace BuildLog.Gearing.Tyres;

/// <summary>Rim widths a tyre may sit on, in inches.</summary>
/// <param name="Low">Narrowest.</param>
/// <param name="Measuring">The width the section was measured on.</param>
/// <param name="High">Widest.</param>
/// <remarks>
/// <code>measuring = share · section, to the nearest ½ in</code>
/// <para>
/// Metric: share by aspect ratio: 0.70 for 75 and up, 0.75 for 60–70, 0.80 for 50–55, 0.85 for 45, 0.90 below; permitted from ½ narrower to 1 wider, 1½ for rims
/// of 6 and 6½ in below 70. Flotation: share = 0.80; 1 narrower to ½ wider, more where the size is known. Numeric: share = 0.78; ½ to either side.
/// </para>
/// <para>
/// The metric rule reproduces twelve published measuring rims (a tyre retailer's technical page); the permitted bands are from memory and
/// fit the one published range, 205/60R15 on 5.5 to 7.5 in. The tyre maker's data sheet decides.
/// </para>
/// </remarks>
public sealed record RimWidth(double Low, double Measuring, double High)
{
    // Section in inches, from memory: 30x9.50R15LT, 31x10.50R15LT, 33x12.50R15LT.
    private static readonly (double Section, RimWidth Rims)[] KnownFlotation = [(9.5, new(6.5, 7.5, 8.5)), (10.5, new(7, 8.5, 9)), (12.5, new(8.5, 10, 11))];

    /// <param name="section">Metres.</param>
    /// <param name="aspectRatio">Height over width.</param>
    public static RimWidth OfMetric(double section, double aspectRatio)
    {
        _ = section.AboveZero(Spoken("A section width, m,"), "0.205");
        _ = aspectRatio.AboveZero(Spoken("An aspect ratio"), "0.65");
        var share = aspectRatio switch
        {
            >= 0.75 => 0.70,
            >= 0.60 => 0.75,
            >= 0.50 => 0.80,
            >= 0.45 => 0.85,
            _ => 0.90,
        };
        var measuring = ToHalf(section / 0.0254 * share);
        return new(measuring - 0.5, measuring, measuring + (measuring is >= 6 and < 7 && aspectRatio < 0.70 ? 1.5 : 1));
    }

    /// <param name="section">Inches, as marked.</param>
    public static RimWidth OfFlotation(double section)
    {
        _ = section.AboveZero(Spoken("A section width, in,"), "10.5");
        foreach (var (known, rims) in KnownFlotation)
        {
            if (known == section) return rims;
        }

        var measuring = ToHalf(0.80 * section);
        return new(measuring - 1, measuring, measuring + 0.5);
    }

    /// <param name="section">Inches, as marked.</param>
    public static RimWidth OfNumeric(double section)
    {
        var measuring = ToHalf(0.78 * section.AboveZero(Spoken("A section width, in,"), "6.00"));
        return new(measuring - 0.5, measuring, measuring + 0.5);
    }

    private static double ToHalf(double inches) => Math.Round(inches * 2, MidpointRounding.AwayFromZero) / 2;
}
