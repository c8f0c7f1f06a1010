using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres.Tables;

namespace BuildLog.Gearing.Tyres.Notations;

/// <summary>Width in inches, rim, nothing on the height: <c>6.00-16</c>, <c>7.50R16</c>, <c>7.50R16LT</c>, <c>11R22.5</c>, <c>6.00 16</c>, <c>7.50/16</c>, <c>750-16</c>.</summary>
/// <remarks>
/// <code>D from the table; else D = d + 2 h S,   h = 1.00, on rims of a half inch (15° taper) 0.85</code>
/// <para>
/// A size that is tabled only as its sister (bias for radial, with LT for without) takes the sister's D with u = 1.5 %; one that is not tabled at all is worked
/// out with the height that the tabled ones have, and u = 3.5 %, what they differ from it by.
/// </para>
/// <para>
/// Without a sign for its cords it is bias, as with a dash or an x: these are the sizes from before radials. A slash, and a blank, only behind a width with
/// decimals: 7/16 is a fraction. Three digits are hundredths of an inch where they are no width in millimetres: 640-13 is 6.40-13.
/// </para>
/// <para>Not for: wide single tyres of trucks, which are lower. Source: the tables name theirs; h from the tables' own rows.</para>
/// </remarks>
internal sealed class Numeric : ITyreNotation
{
    private const double Narrowest = 3;
    private const double SisterSpread = 0.015;
    internal const double FormulaSpread = 0.035;

    public string Example => "7.50R16LT 112/107N";

    /// <summary>Height over width where no table has the size.</summary>
    internal static double Height(double rim) => rim == Math.Floor(rim) ? 1.00 : 0.85;

    public Parsed<TyreSize> Read(Marking marking)
    {
        if (!marking.Number(out var width)) return marking.Stop(Spoken("the section width in inches"));
        var inHundredths = IsHundredths(width) && !marking.HasPoint;
        var notBegun = Spoken($"{width:0.##} is no section width in inches (3 to 18)");
        if (inHundredths) width /= 100;
        if (width is < Narrowest or > 18) return marking.NotBegun(notBegun);
        if (!marking.Cords(out var construction, out var rated) && !marking.Take("X") && !(marking.HasPoint && marking.Take("/")) && !((marking.HasPoint || inHundredths) && marking.Blank()))
            return inHundredths ? marking.NotBegun(notBegun) : marking.Stop(Spoken("R for radial, or '-' for bias"));

        return RimCode.Read(marking).Then(rim =>
        {
            var lightTruck = marking.Take("LT") || marking.Take("C");
            var code = new SizeCode(width, rim, construction, lightTruck);
            return ServiceDescription.Read(marking, rated).Then<TyreSize>(service => service.On(new TyreSize
            {
                Designation = marking.Designation,
                Notation = "numeric",
                SectionWidth = NumericTables.Find(code)?.Row.Section / 1000 ?? width * 0.0254,
                Construction = construction,
                IsCommercial = lightTruck || NumericTables.Find(code) is { Table.ForTrucks: true },
                RimDiameter = rim * 0.0254,
                Dimensions = DimensionsOf(code),
                RimWidth = RimWidth.OfNumeric(width),
            }));
        });
    }

    // Widths in millimetres end in 5 up to the widest tyre.
    private static bool IsHundredths(double width) => width is >= 100 * Narrowest and < 1000 && (width % 10 == 0 || (width > Metric.Widest && width % 5 == 0));

    private static Dimensions DimensionsOf(SizeCode code)
    {
        if (NumericTables.Find(code) is { } entry) return Dimensions.ByTable(entry.Row.Diameter / 1000, entry.Table.Source, entry.Table.Spread);
        if (NumericTables.Sister(code) is { } sister)
            return Dimensions.ByTable(sister.Row.Diameter / 1000, Spoken($"as {sister.Code}: {sister.Table.Source}"), Math.Max(SisterSpread, sister.Table.Spread));

        var height = Height(code.Rim);
        return Dimensions.ByFormula(
            (code.Rim + (2 * height * code.Width)) * 0.0254,
            Spoken($"no table at hand has it: D = d + 2 · {height:0.00} S, as the sizes tabled; roll it out"),
            FormulaSpread);
    }
}
