namespace BuildLog.Gearing.Tyres.Tables;

/// <summary>Every table of numeric sizes, what was read before what is remembered.</summary>
internal static class NumericTables
{
    public static readonly IReadOnlyList<SizeTable> All = [HeavyDutyTable.Table, TruckRadialTable.Table, LightTruckTable.Table, BiasPassengerTable.Table];

    private static readonly Dictionary<SizeCode, Entry> Entries = Index();

    internal sealed record Entry(SizeCode Code, SizeRow Row, SizeTable Table);

    public static Entry? Find(SizeCode code) => Entries.GetValueOrDefault(code);

    /// <summary>The size of the same width and rim that differs least: with LT for without, bias for radial.</summary>
    public static Entry? Sister(SizeCode code)
    {
        var other = code.Construction == Construction.Radial ? Construction.Bias : Construction.Radial;
        return Find(code with { LightTruck = !code.LightTruck }) ?? Find(code with { Construction = other }) ?? Find(code with { LightTruck = !code.LightTruck, Construction = other });
    }

    private static Dictionary<SizeCode, Entry> Index()
    {
        var entries = new Dictionary<SizeCode, Entry>();
        foreach (var table in All)
        {
            foreach (var row in table.Rows) entries.TryAdd(table.CodeOf(row), new(table.CodeOf(row), row, table));
        }

        return entries;
    }
}
