using BuildLog.Data.Rows;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Vehicles;

/// <summary>Reads vehicles by hand, with what is noted of them.</summary>
internal static class VehicleReader
{
    private const string Sql = """SELECT * FROM "Vehicles" WHERE "Id" IN (SELECT value FROM json_each($ids))""";

    public static List<Vehicle> All(Snapshot record) => Filled(record, record.Rows.Read("SELECT * FROM Vehicles", From));

    public static IReadOnlyList<Vehicle> Read(Snapshot record, IReadOnlyCollection<long> ids) => Filled(record, record.Rows.Read(Sql, From, ids));

    /// <summary>The vehicle as it is stored now.</summary>
    /// <exception cref="RefusedException">It is gone.</exception>
    public static Vehicle Stored(Snapshot record, Vehicle vehicle) => Stored(record, vehicle.Id, vehicle.ToString());

    /// <summary>The same by its number alone.</summary>
    /// <exception cref="RefusedException">It is gone.</exception>
    public static Vehicle Stored(Snapshot record, long id, string? name = null)
    {
        record.Vehicles.Load([id]);
        return record.Vehicles.Holds(id)
            ? record.Vehicles[id]
            : throw new RefusedException("vehicle", Spoken($"{name ?? Spoken("That vehicle")} is not in the record any more."), "");
    }

    private static List<Vehicle> Filled(Snapshot record, List<Vehicle> vehicles)
    {
        SpecReader.Fill(record, vehicles);
        return vehicles;
    }

    private static Vehicle From(Row row) => row.Kept(new Vehicle
    {
        Name = row.Text("Name"),
        State = row.Word<VehicleState>("State"),
        Description = row.Text("Description"),
        Owner = row.Text("Owner"),
        ChassisNumber = row.Text("ChassisNumber"),
        Registration = row.Text("Registration"),
        DrivesInFront = row.Flag("DrivesInFront"),
        OdometerUnit = row.Word<OdometerUnit>("OdometerUnit"),
        Notes = row.Text("Notes"),
        BodyClass = row.TextIfAny("BodyClass"),
        RollingClass = row.TextIfAny("RollingClass"),
    });
}
