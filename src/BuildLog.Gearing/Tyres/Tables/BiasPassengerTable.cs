namespace BuildLog.Gearing.Tyres.Tables;

/// <summary>Bias-ply passenger tyres marked in inches; from memory, none of it read.</summary>
internal static class BiasPassengerTable
{
    public static readonly SizeTable Table = new(new Later("UN R30 annex 5, table I, from memory"), SizeTable.RememberedSpread, Construction.Bias, lightTruck: false, forTrucks: false,
    [
        new(4.8, 10, 490, 128), new(5.2, 10, 508, 132), new(5.2, 12, 558, 132), new(5.6, 13, 600, 145), new(5.9, 13, 616, 150), new(6.4, 13, 642, 163),
        new(5.2, 14, 612, 132), new(5.6, 14, 626, 145), new(5.9, 14, 642, 150), new(6.4, 14, 666, 163), new(5.6, 15, 650, 145), new(5.9, 15, 668, 150),
        new(6.4, 15, 692, 163), new(6.7, 15, 710, 170), new(7.1, 15, 724, 180), new(7.6, 15, 742, 193), new(8.2, 15, 760, 213), new(5.5, 12, 552, 142),
        new(6, 12, 574, 156), new(7, 13, 644, 178), new(7, 14, 668, 178), new(7.5, 14, 688, 190),
    ]);
}
