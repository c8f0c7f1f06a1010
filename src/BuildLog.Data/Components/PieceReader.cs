using BuildLog.Data.Rows;
using BuildLog.Gearing.Propshafts;

namespace BuildLog.Data.Components;

/// <summary>Reads the pieces of propshafts by hand.</summary>
internal static class PieceReader
{
    private const string Sql =
        """
        SELECT * FROM "ShaftPieces" WHERE "PropshaftId" IN (SELECT value FROM json_each($ids)) ORDER BY "PropshaftId", "Ordinal"
        """;

    public static void Fill(Snapshot record, IReadOnlyList<PropshaftComponent> shafts)
    {
        var byId = shafts.ToDictionary(shaft => shaft.Id);
        foreach (var piece in record.Rows.Read(Sql, From, byId.Keys)) byId[piece.PropshaftId].Rows.Add(piece);
    }

    private static PieceRow From(Row row) => new()
    {
        Id = row.Key("Id"),
        PropshaftId = row.Key("PropshaftId"),
        Ordinal = row.Count("Ordinal"),
        Outer = row.Noted("Outer"),
        Wall = row.Noted("Wall"),
        Length = row.Noted("Length"),
        Yokes = row.WordIfAny<Yokes>("Yokes"),
        Side = row.Noted("Side"),
        Plan = row.Noted("Plan"),
    };
}
