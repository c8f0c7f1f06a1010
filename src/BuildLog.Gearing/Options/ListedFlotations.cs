using System.Globalization;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Options;

/// <summary>Flotation sizes that are commonly sold: overall diameter and width in inches.</summary>
/// <remarks>From memory, common practice in the trade, no source: candidates that decide no finding. Not every size is made for every rim.</remarks>
internal static class ListedFlotations
{
    private static readonly IReadOnlyList<(int Diameter, double Width)> Common =
    [
        (27, 8.5), (28, 8.5), (28, 9), (29, 9.5), (30, 9.5), (31, 9.5), (31, 10.5), (32, 9.5), (32, 10.5), (32, 11.5), (33, 9.5), (33, 10.5), (33, 11.5), (33, 12.5),
        (34, 10.5), (35, 10.5), (35, 12.5), (36, 13.5), (37, 12.5), (37, 13.5), (38, 12.5), (38, 15.5), (40, 13.5),
    ];

    /// <summary>Those of a rim's diameter in inches; the wall is at least a sixth of the tyre's height, or it is none of these tyres.</summary>
    public static IEnumerable<TyreSize> On(double rim)
        => Common.Where(size => size.Diameter - rim >= size.Diameter / 3.0)
            .Select(size => TyreSizeText.Read(string.Create(CultureInfo.InvariantCulture, $"{size.Diameter}x{size.Width:0.00}R{rim}LT")))
            .Where(read => read.Refusal is null).Select(read => read.OrRefuse());
}
