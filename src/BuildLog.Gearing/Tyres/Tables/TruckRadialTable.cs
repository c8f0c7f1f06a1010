namespace BuildLog.Gearing.Tyres.Tables;

/// <summary>Radial tyres for vans and trucks marked in inches; from memory, none of it read.</summary>
/// <remarks>10.00R20 stands as 1025 mm in the one file that was read, its digits changed about; 1052 is remembered.</remarks>
internal static class TruckRadialTable
{
    public static readonly SizeTable Table = new(new Later("UN R54 annex 5, part I, from memory"), SizeTable.RememberedSpread, Construction.Radial, lightTruck: false, forTrucks: true,
    [
        new(6, 16, 728, 170), new(6.5, 16, 742, 176), new(7, 15, 746, 197), new(7, 16, 778, 198), new(7.5, 15, 772, 212), new(7.5, 16, 802, 210),
        new(7.5, 17, 852, 210), new(7.5, 20, 928, 210), new(8.25, 15, 836, 230), new(8.25, 16, 860, 230), new(8.25, 20, 962, 230), new(9, 20, 1018, 258),
        new(10, 20, 1052, 275), new(11, 20, 1082, 286), new(12, 20, 1122, 313), new(12, 24, 1226, 313), new(14, 20, 1238, 370), new(8, 17.5, 784, 208),
        new(8.5, 17.5, 802, 215), new(9.5, 17.5, 842, 240), new(10, 17.5, 858, 254), new(8, 22.5, 936, 203), new(9, 22.5, 970, 229), new(10, 22.5, 1020, 254),
        new(11, 22.5, 1050, 279), new(12, 22.5, 1084, 300), new(13, 22.5, 1124, 320),
    ]);
}
