using BuildLog.Data.Rows;

namespace BuildLog.Data.Donors;

/// <summary>Reads donors by hand, with whom they were bought from.</summary>
internal static class DonorReader
{
    private const string Sql = """SELECT * FROM "Donors" WHERE "Id" IN (SELECT value FROM json_each($ids))""";

    public static IReadOnlyList<Donor> Read(Snapshot record, IReadOnlyCollection<long> ids)
    {
        var donors = record.Rows.Read(Sql, From, ids);
        record.Suppliers.Load(donors.Select(donor => donor.SellerId));
        foreach (var donor in donors) donor.Seller = record.Suppliers.Named(donor.SellerId);
        return donors;
    }

    private static Donor From(Row row) => row.Kept(new Donor
    {
        Name = row.Text("Name"),
        ChassisNumber = row.Text("ChassisNumber"),
        SellerId = row.KeyIfAny("SellerId"),
        Bought = row.LooseDay("Bought"),
        Price = row.Money("Price"),
        Fate = row.Word<DonorFate>("Fate"),
        Place = row.Text("Place"),
        Notes = row.Text("Notes"),
    });
}
