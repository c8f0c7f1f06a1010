namespace BuildLog.Gearing.Tyres.Tables;

/// <summary>A numeric size as the tables are asked for it.</summary>
/// <param name="Width">Nominal width, inches.</param>
/// <param name="Rim">Rim diameter, inches.</param>
internal readonly record struct SizeCode(double Width, double Rim, Construction Construction, bool LightTruck)
{
    /// <summary>As it is marked: <c>6.00-16LT</c>, <c>9.5R17.5</c>.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Width.ToString(Rim == Math.Floor(Rim) ? "0.00" : "0.##", System.Globalization.CultureInfo.InvariantCulture)}{(Construction == Construction.Radial ? "R" : "-")}{Rim}{(LightTruck ? "LT" : "")}");
}

/// <summary>One size of a table.</summary>
/// <param name="Width">Nominal width, inches.</param>
/// <param name="Rim">Rim diameter, inches.</param>
/// <param name="Diameter">Overall diameter, millimetres.</param>
/// <param name="Section">Section width, millimetres; null where the table has none.</param>
internal sealed record SizeRow(double Width, double Rim, double Diameter, double? Section);

/// <summary>Sizes of one kind, from one source.</summary>
/// <param name="source">Where it was read, or that it was not.</param>
/// <param name="spread">Relative standard uncertainty of a tyre's diameter under it.</param>
/// <param name="construction">Of all its sizes.</param>
/// <param name="lightTruck">All its sizes end in LT.</param>
/// <param name="forTrucks">Its sizes are for trucks and vans, whatever their ending.</param>
internal sealed class SizeTable(Later source, double spread, Construction construction, bool lightTruck, bool forTrucks, IReadOnlyList<SizeRow> rows)
{
    /// <summary>u(D) where the row itself was read.</summary>
    public const double ReadSpread = 0.01;

    /// <summary>u(D) where the row was only remembered.</summary>
    public const double RememberedSpread = 0.015;

    public string Source => source;

    public double Spread => spread;

    public bool ForTrucks => forTrucks;

    public IReadOnlyList<SizeRow> Rows => rows;

    public SizeCode CodeOf(SizeRow row) => new(row.Width, row.Rim, construction, lightTruck);
}
