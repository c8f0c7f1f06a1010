using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres.Notations;

/// <summary>Width in millimetres, aspect ratio, rim: <c>205/65R15 94H</c>, <c>P215/75 R 15</c>, <c>LT235/85R16 120/116Q</c>, <c>195/75R16C</c>, <c>175/80-13</c>.</summary>
/// <remarks>
/// <code>D = d + 2 H,   H = S · a</code>
/// <para>P marks a passenger tyre, LT and C one for light trucks and vans; the dimensions follow from the same rule. D is the design dimension, not rounded.</para>
/// <para>Uncertainty: tyres of one marking differ; u(D) = 1 %. Source: UN R30 and R54, par. 2.17 and 6.1.2.1.</para>
/// </remarks>
internal sealed class Metric : ITyreNotation
{
    /// <summary>Section widths of road tyres, millimetres.</summary>
    internal const double Narrowest = 95, Widest = 555;

    public string Example => "205/65R15 94H";

    public Parsed<TyreSize> Read(Marking marking)
    {
        var lightTruck = marking.Take("LT");
        if (!lightTruck) _ = marking.Take("P");
        if (!marking.Number(out var width)) return marking.Stop(Spoken("the section width in millimetres"));
        if (width is < Narrowest or > Widest || width != Math.Floor(width)) return marking.NotBegun(Spoken($"{width:0.##} mm is no section width of a road tyre (95 to 555)"));
        if (!marking.Take("/")) return marking.Stop(Spoken("'/' and the aspect ratio"));
        if (!marking.Number(out var aspect)) return marking.Stop(Spoken("the aspect ratio in per cent"));
        if (aspect is < 20 or > 110) return marking.Wrong(Spoken($"{aspect:0.##} is no aspect ratio (20 to 110)"));
        if (!marking.Cords(out var construction, out var rated)) return marking.Stop(Spoken("R for radial, or '-' for bias"));

        return RimCode.Read(marking).Then(rim =>
        {
            lightTruck |= marking.Take("LT") || marking.Take("C");
            return ServiceDescription.Read(marking, rated).Then<TyreSize>(service => service.On(new TyreSize
            {
                Designation = marking.Designation,
                Notation = "metric",
                SectionWidth = width / 1000,
                AspectRatio = aspect / 100,
                Construction = construction,
                IsCommercial = lightTruck,
                RimDiameter = rim * 0.0254,
                Dimensions = Dimensions.ByFormula((rim * 0.0254) + (2 * width / 1000 * aspect / 100), Spoken("UN R30 and R54, D = d + 2H"), 0.01),
                RimWidth = RimWidth.OfMetric(width / 1000, aspect / 100),
            }));
        });
    }
}
