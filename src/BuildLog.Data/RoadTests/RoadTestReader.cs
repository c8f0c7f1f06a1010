using BuildLog.Data.Rows;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.RoadTests;

/// <summary>Reads the road-test log and the re-torque register of a vehicle by hand.</summary>
internal static class RoadTestReader
{
    private const string TestsSql = """SELECT * FROM "RoadTests" WHERE "VehicleId" = $vehicle ORDER BY "Date" DESC, "Id" DESC""";

    private const string RetorquesSql =
        """
        SELECT * FROM "Retorques" WHERE "VehicleId" = $vehicle ORDER BY "Date", "Id"
        """;

    /// <summary>The latest first.</summary>
    public static IReadOnlyList<RoadTest> Of(Snapshot record, Vehicle vehicle) => record.Rows.Read(TestsSql, From, ("$vehicle", vehicle.Id));

    /// <summary>As they were signed.</summary>
    public static IReadOnlyList<Retorque> RetorquesOf(Snapshot record, Vehicle vehicle) => record.Rows.Read(RetorquesSql, RetorqueFrom, ("$vehicle", vehicle.Id));

    private static RoadTest From(Row row) => row.Kept(new RoadTest
    {
        VehicleId = row.Key("VehicleId"),
        Date = row.Day("Date"),
        DateAsTyped = row.LooseDay("DateAsTyped"),
        Odometer = row.Odometer(""),
        Speed = row.Noted("Speed"),
        EngineSpeed = row.Noted("EngineSpeed"),
        Gear = row.Text("Gear"),
        Temperatures = row.Text("Temperatures"),
        Vibration = row.Text("Vibration"),
        Noises = row.Text("Noises"),
        Defects = row.Text("Defects"),
        Fix = row.Text("Fix"),
    });

    private static Retorque RetorqueFrom(Row row) => row.Kept(new Retorque
    {
        VehicleId = row.Key("VehicleId"),
        Date = row.Day("Date"),
        What = row.Text("What"),
        Torque = row.Noted("Torque"),
        Initials = row.Text("Initials"),
    });
}
