using System.Globalization;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>JCGM 100:2008, Table G.2, the column p = 95 %.</summary>
internal static class StudentTable
{
    private static readonly (double Freedom, double Factor)[] Column =
    [
        (1, 12.71), (2, 4.30), (3, 3.18), (4, 2.78), (5, 2.57), (6, 2.45), (7, 2.36), (8, 2.31), (9, 2.26), (10, 2.23), (11, 2.20), (12, 2.18),
        (13, 2.16), (14, 2.14), (15, 2.13), (16, 2.12), (17, 2.11), (18, 2.10), (19, 2.09), (20, 2.09), (25, 2.06), (30, 2.04), (35, 2.03),
        (40, 2.02), (45, 2.01), (50, 2.01), (100, 1.98), (double.PositiveInfinity, 1.96),
    ];

    public static PublishedSet Factors() => new("Coverage factors t for 95 %", "JCGM 100:2008, Table G.2 (two cells read, the rest recomputed from the distribution)", Standing.Read,
    [
        .. Column.Select(row => Figure.ToPlaces(string.Create(CultureInfo.InvariantCulture, $"ν = {row.Freedom}"), row.Factor, 2, StudentT.Factor95(row.Freedom))),
    ]);
}
