namespace BuildLog.Gearing.Tyres;

/// <summary>Rim widths a tyre may sit on, in inches.</summary>
/// <param name="Low">Narrowest.</param>
/// <param name="Measuring">The width the section was measured on.</param>
/// <param name="High">Widest.</param>
/// <remarks>
/// <code>measuring = x · section, to the nearest ½ in;  permitted = measuring − ½ … measuring + 1 (+ 1½ for rims of 6 and 6½ in below a = 0.70)</code>
/// <para>x by aspect ratio: 0.70 for 75 and up, 0.75 for 60–70, 0.80 for 50–55, 0.85 for 45, 0.90 below.</para>
/// <para>
/// The measuring rule reproduces twelve published measuring rims (a tyre retailer's technical page); the permitted band is from memory and
/// fits the one published range, 205/60R15 on 5.5 to 7.5 in. The tyre maker's data sheet decides.
/// </para>
/// </remarks>
public sealed record RimWidth(double Low, double Measuring, double High)
{
    public static RimWidth For(double sectionWidthMetres, double aspectRatio)
    {
        var share = aspectRatio switch
        {
            >= 0.75 => 0.70,
            >= 0.60 => 0.75,
            >= 0.50 => 0.80,
            >= 0.45 => 0.85,
            _ => 0.90,
        };
        var measuring = Math.Round(sectionWidthMetres / 0.0254 * share * 2, MidpointRounding.AwayFromZero) / 2;
        return new(measuring - 0.5, measuring, measuring + (measuring is >= 6 and < 7 && aspectRatio < 0.70 ? 1.5 : 1));
    }
}
