namespace BuildLog.Gearing.Tyres.Tables;

/// <summary>Radial tyres marked in millimetres without an aspect ratio; from memory, none of it read.</summary>
/// <remarks>Widths here are the marking's millimetres, not inches.</remarks>
internal static class RadialMetricTable
{
    private static string Source => Spoken("UN R30 annex 5, table II, from memory");

    public static readonly IReadOnlyList<SizeRow> Rows =
    [
        new(145, 12, 542, 147), new(155, 12, 550, 157), new(135, 13, 548, 137), new(145, 13, 566, 147), new(155, 13, 578, 157), new(165, 13, 596, 167),
        new(175, 13, 608, 178), new(185, 13, 624, 188), new(145, 14, 590, 147), new(155, 14, 604, 157), new(165, 14, 622, 167), new(175, 14, 634, 178),
        new(185, 14, 650, 188), new(195, 14, 666, 198), new(205, 14, 686, 208), new(145, 15, 616, 147), new(155, 15, 630, 157), new(165, 15, 646, 167),
        new(175, 15, 660, 178), new(185, 15, 674, 188), new(205, 15, 710, 208), new(225, 15, 738, 228), new(235, 15, 752, 238), new(175, 16, 686, 178),
        new(185, 16, 698, 188), new(205, 16, 736, 208),
    ];

    public static SizeRow? Find(double width, double rim) => Rows.FirstOrDefault(row => row.Width == width && row.Rim == rim);

    public static Dimensions Of(SizeRow row) => Dimensions.ByTable(row.Diameter / 1000, Source, SizeTable.RememberedSpread);
}
