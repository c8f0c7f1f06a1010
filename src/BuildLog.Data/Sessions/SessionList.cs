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

    // Of a vehicle only what measured itself: sessions of parts go with the parts.
    private const string OfVehicleAndParts =
        """
        SELECT * FROM "Sessions"
        WHERE "ComponentId" IN (SELECT value FROM json_each($ids)) OR ("VehicleId" = $vehicle AND "ComponentId" IS NULL)
        ORDER BY "Date" DESC, "Id" DESC
        """;

    public static IReadOnlyList<Session> Of(Snapshot record, Vehicle vehicle)
        => SessionReader.Joined(record, record.Rows.Read(OfVehicle, SessionReader.From, ("$vehicle", vehicle.Id)));

    public static IReadOnlyList<Session> Of(Snapshot record, Component component) => Of(record, [component.Id]);

    public static IReadOnlyList<Session> Of(Snapshot record, IReadOnlyCollection<long> components)
        => SessionReader.Joined(record, record.Rows.Read(OfParts, SessionReader.From, components));

    /// <summary>What a vehicle's driveline rests on: sessions of the vehicle itself, and of the parts on it.</summary>
    public static IReadOnlyList<Session> Of(Snapshot record, Vehicle vehicle, IReadOnlyCollection<long> components)
        => SessionReader.Joined(record, record.Rows.Read(OfVehicleAndParts, SessionReader.From, ("$ids", RowReader.Listed(components)), ("$vehicle", vehicle.Id)));
}
