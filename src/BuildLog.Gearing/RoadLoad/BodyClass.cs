using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>Usual drag coefficients and frontal areas of a kind of body, for a vehicle nobody has coasted down.</summary>
/// <param name="InWords">As the trade says it.</param>
/// <param name="CoefficientLow">Lowest usual drag coefficient.</param>
/// <param name="CoefficientHigh">Highest usual.</param>
/// <param name="AreaLow">Smallest usual frontal area, m².</param>
/// <param name="AreaHigh">Largest usual, m².</param>
/// <remarks>
/// <code>Cd·A: the middles multiplied; u² = (A · half-width of Cd/√3)² + (Cd · half-width of A/√3)²</code>
/// <para>Source: bands from memory, ± 10 %; those of saloons and vans lie inside a textbook's class table (0.22–0.40, 0.35–0.50 for later ones).</para>
/// </remarks>
public sealed record BodyClass(Later InWords, double CoefficientLow, double CoefficientHigh, double AreaLow, double AreaHigh)
{
    /// <summary>What the record calls it, in any language.</summary>
    public string Name => InWords.Text;

    /// <summary>The kinds to choose from.</summary>
    public static readonly IReadOnlyList<BodyClass> All =
    [
        new(new Later("saloon, 1945–60"), 0.48, 0.60, 2.0, 2.4),
        new(new Later("large saloon, 1960–79"), 0.45, 0.55, 2.1, 2.4),
        new(new Later("saloon, 1960–79"), 0.40, 0.48, 1.7, 2.0),
        new(new Later("saloon, 1980–95"), 0.30, 0.40, 1.8, 2.1),
        new(new Later("coupé, 1964–74"), 0.42, 0.50, 1.9, 2.2),
        new(new Later("pickup with separate wings, 1935–55"), 0.55, 0.65, 2.3, 2.7),
        new(new Later("pickup, 1955–72"), 0.50, 0.60, 2.4, 2.8),
        new(new Later("pickup, 1973–91"), 0.45, 0.52, 2.6, 3.0),
        new(new Later("raised 4×4 pickup"), 0.48, 0.60, 2.9, 3.4),
        new(new Later("compact pickup, 1975–95"), 0.44, 0.50, 2.0, 2.4),
        new(new Later("rear-engined van, 1950–79"), 0.42, 0.50, 2.6, 3.1),
        new(new Later("box van, 1970–95"), 0.40, 0.48, 2.9, 3.6),
        new(new Later("short 4×4, upright screen"), 0.55, 0.70, 2.1, 2.6),
        new(new Later("station-wagon 4×4, 1970–99"), 0.45, 0.60, 2.5, 3.0),
    ];

    /// <summary>A drag area of this class, m²; ask once for each vehicle and keep the answer, every call is another vehicle.</summary>
    public Known DragArea()
    {
        var evidence = new Evidence(Spoken($"drag area of a {InWords}"), _ => Spoken("coast down on a level road and enter the drag area"));
        var coefficient = Middle(Spoken("drag coefficient"), CoefficientLow, CoefficientHigh, evidence);
        return new(coefficient * Middle(Spoken("frontal area"), AreaLow, AreaHigh, evidence), Source.Assumed, InWords);
    }

    private static Measured Middle(string name, double low, double high, Evidence evidence)
        => Measured.From((low + high) / 2, Input.Rectangular(name, (high - low) / 2, evidence));
}
