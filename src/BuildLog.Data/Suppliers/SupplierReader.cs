using BuildLog.Data.Rows;

namespace BuildLog.Data.Suppliers;

/// <summary>Reads suppliers by hand.</summary>
internal static class SupplierReader
{
    private const string Sql = """SELECT * FROM "Suppliers" WHERE "Id" IN (SELECT value FROM json_each($ids))""";

    public static IReadOnlyList<Supplier> Read(Snapshot record, IReadOnlyCollection<long> ids) => record.Rows.Read(Sql, From, ids);

    private static Supplier From(Row row) => row.Kept(new Supplier
    {
        Name = row.Text("Name"),
        Contact = row.Text("Contact"),
        GoodFor = row.Text("GoodFor"),
        Notes = row.Text("Notes"),
    });
}
