using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres.Tables;

namespace BuildLog.Gearing.Tyres.Notations;

/// <summary>The older metric sizes without an aspect ratio: <c>165R13</c>, <c>165 SR 14</c>, <c>195R14C</c>, <c>185 15</c>.</summary>
/// <remarks>
/// <code>D from the table; else D = d + 2 · 0.81 S</code>
/// <para>
/// Their height is about 0.80 to 0.82 of their width and stands in a table. 0.81 gives every row of that table within 2 % of D; a size that is not in it has
/// u(D) = 1.5 % for that.
/// </para>
/// <para>A blank alone is radial, as all of that table, and only of a size that stands in it: elsewhere an aspect ratio was forgotten.</para>
/// <para>Source: UN R30 annex 5, table II, from memory; the share from the table's own rows.</para>
/// </remarks>
internal sealed class MetricWithoutAspect : ITyreNotation
{
    internal const double Height = 0.81;

    public string Example => "195R14C 106/104N";

    public Parsed<TyreSize> Read(Marking marking)
    {
        if (!marking.Number(out var width)) return marking.Stop(Spoken("the section width in millimetres"));
        if (width is < 115 or > 265 || width % 10 != 5) return marking.NotBegun(Spoken($"{width:0.##} is no section width of a size without an aspect ratio (115 to 265)"));
        if (!marking.Cords(out var construction, out var rated))
        {
            if (!TabledAfterBlank(marking, width)) return marking.Stop(Spoken("'/' and the aspect ratio, or R"));
            construction = Construction.Radial;
        }

        return RimCode.Read(marking).Then(rim =>
        {
            var lightTruck = marking.Take("LT") || marking.Take("C");
            return ServiceDescription.Read(marking, rated).Then<TyreSize>(service => service.On(new TyreSize
            {
                Designation = marking.Designation,
                Notation = "metric",
                SectionWidth = width / 1000,
                Construction = construction,
                IsCommercial = lightTruck,
                RimDiameter = rim * 0.0254,
                Dimensions = RadialMetricTable.Find(width, rim) is { } row
                    ? RadialMetricTable.Of(row)
                    : Dimensions.ByFormula((rim * 0.0254) + (2 * Height * width / 1000), Spoken("D = d + 2 · 0.81 S, the share of the sizes tabled; from memory"), 0.015),
                RimWidth = RimWidth.OfMetric(width / 1000, Height),
            }));
        });
    }

    private static bool TabledAfterBlank(Marking marking, double width)
    {
        var before = marking.Position;
        if (!marking.Blank()) return false;

        var rim = marking.Position;
        var tabled = marking.Number(out var inches) && RadialMetricTable.Find(width, inches) is not null;
        marking.BackTo(tabled ? rim : before);
        return tabled;
    }
}
