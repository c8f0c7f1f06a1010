using BuildLog.Data.Components;
using BuildLog.Data.Rows;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Sessions;

/// <summary>Which sessions speak of a vehicle or a part; the latest first.</summary>
internal static class SessionList
{
    private const string OfVehicle =
        """
        SELECT * FROM "Sessions"
        WHERE "VehicleId" = $vehicle OR "ComponentId" IN (SELECT "ComponentId" FROM "Fitments" WHERE "VehicleId" = $vehicle)
        ORDER BY "Date" DESC, "Id" DESC
        """;

    private const string OfParts =
        """
        SELECT * FROM "Sessions" WHERE "ComponentId" IN (SELECT value FROM json_each($ids)) ORDER BY "Date" DESC, "Id" DESC
        """;

    public static IReadOnlyList<Session> Of(Snapshot record, Vehicle vehicle)
        => SessionReader.Joined(record, record.Rows.Read(OfVehicle, SessionReader.From, ("$vehicle", vehicle.Id)));

    public static IReadOnlyList<Session> Of(Snapshot record, Component component) => Of(record, [component.Id]);

    public static IReadOnlyList<Session> Of(Snapshot record, IReadOnlyCollection<long> components)
        => SessionReader.Joined(record, record.Rows.Read(OfParts, SessionReader.From, components));
}
