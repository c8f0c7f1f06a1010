namespace BuildLog.Gearing.Tyres.Tables;

/// <summary>Bias-ply light-truck tyres, highway tread; from memory, none of it read.</summary>
internal static class LightTruckTable
{
    public static readonly SizeTable Table = new(new Later("UN R54 annex 5, part II, from memory"), SizeTable.RememberedSpread, Construction.Bias, lightTruck: true, forTrucks: true,
    [
        new(6, 16, 732, 173), new(6.5, 16, 755, 182), new(6.7, 15, 722, 191), new(7, 15, 752, 202), new(7, 16, 778, 202), new(7.5, 15, 782, 220),
        new(7.5, 16, 808, 220), new(8.25, 16, 859, 241), new(9, 16, 890, 257),
    ]);
}
