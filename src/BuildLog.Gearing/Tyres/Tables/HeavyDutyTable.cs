namespace BuildLog.Gearing.Tyres.Tables;

/// <summary>Radial truck tyres marked in inches, diameters read in the European Commission's heavy-duty CO2 declaration data.</summary>
internal static class HeavyDutyTable
{
    public static readonly SizeTable Table = new(new Later("EC heavy-duty CO2 declaration data"), SizeTable.ReadSpread, Construction.Radial, lightTruck: false, forTrucks: true,
    [
        new(9, 22.5, 970, null), new(9.5, 17.5, 842, null), new(10, 22.5, 1020, null), new(11, 22.5, 1050, null),
        new(12, 22.5, 1084, null), new(12, 24, 1226, null), new(13, 22.5, 1124, null), new(14.5, 20, 1092, null),
    ]);
}
