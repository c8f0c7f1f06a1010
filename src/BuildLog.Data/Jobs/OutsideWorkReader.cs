using BuildLog.Data.Rows;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Jobs;

/// <summary>Reads work given out by hand, each with where it is: what is away first, by its promised day.</summary>
internal static class OutsideWorkReader
{
    private const string OfVehicle =
        """
        SELECT * FROM "OutsideWorks" WHERE "JobId" IN (SELECT "Id" FROM "Jobs" WHERE "VehicleId" = $vehicle)
        ORDER BY "Back" IS NOT NULL, "Promised" IS NULL, "Promised", "Id"
        """;

    public static IReadOnlyList<OutsideWork> Of(Snapshot record, Vehicle vehicle)
    {
        var given = record.Rows.Read(OfVehicle, From, ("$vehicle", vehicle.Id));
        record.Suppliers.Load(given.Select(work => (long?)work.SupplierId));
        foreach (var work in given) work.Supplier = record.Suppliers[work.SupplierId];
        return given;
    }

    private static OutsideWork From(Row row) => row.Kept(new OutsideWork
    {
        JobId = row.Key("JobId"),
        SupplierId = row.Key("SupplierId"),
        What = row.Text("What"),
        Sent = row.Day("Sent"),
        SentAsTyped = row.LooseDay("SentAsTyped"),
        Promised = row.DayIfAny("Promised"),
        Back = row.DayIfAny("Back"),
        BackAsTyped = row.LooseDay("BackAsTyped"),
        Certificate = row.Text("Certificate"),
    });
}
