using BuildLog.Data.Components;
using BuildLog.Data.Rows;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Identity;

/// <summary>Reads by hand the numbers read off something, as they were added.</summary>
internal static class IdentityReader
{
    private const string OfVehicle =
        """
        SELECT * FROM "IdentityNumbers" WHERE "VehicleId" = $vehicle ORDER BY "Id"
        """;

    private const string OfPart =
        """
        SELECT * FROM "IdentityNumbers" WHERE "ComponentId" = $part ORDER BY "Id"
        """;

    public static IReadOnlyList<IdentityNumber> Of(Snapshot record, Vehicle vehicle) => record.Rows.Read(OfVehicle, From, ("$vehicle", vehicle.Id));

    public static IReadOnlyList<IdentityNumber> Of(Snapshot record, Component component) => record.Rows.Read(OfPart, From, ("$part", component.Id));

    private static IdentityNumber From(Row row) => row.Kept(new IdentityNumber
    {
        VehicleId = row.KeyIfAny("VehicleId"),
        ComponentId = row.KeyIfAny("ComponentId"),
        Identified = row.Word<Identified>("Identified"),
        Number = row.Text("Number"),
        Where = row.Text("Where"),
        Read = row.LooseDay("Read"),
        ReadBy = row.Text("ReadBy"),
    });
}
