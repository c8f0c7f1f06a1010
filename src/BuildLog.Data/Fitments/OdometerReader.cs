using BuildLog.Data.Rows;

namespace BuildLog.Data.Fitments;

/// <summary>Reads by hand when odometers started anew.</summary>
internal static class OdometerReader
{
    private const string OfVehicle =
        """
        SELECT * FROM "OdometerChanges" WHERE "VehicleId" = $vehicle ORDER BY "Day", "Order"
        """;

    /// <summary>From the first to the last.</summary>
    public static IReadOnlyList<OdometerChange> Of(Snapshot record, long vehicleId) => record.Rows.Read(OfVehicle, From, ("$vehicle", vehicleId));

    private static OdometerChange From(Row row) => row.Kept(new OdometerChange
    {
        VehicleId = row.Key("VehicleId"),
        How = row.Word<OdometerChanged>("How"),
        Day = row.Day("Day"),
        Order = row.Count("Order"),
        Last = row.Odometer("Last"),
        First = row.Odometer("First"),
        Reason = row.Text("Reason"),
    });
}
