using BuildLog.Data.Rows;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Goals;

/// <summary>Reads goals of every kind by hand. Whatever column a kind gets, it is read here.</summary>
internal static class GoalReader
{
    private const string OfVehicle =
        """
        SELECT * FROM "Goals" WHERE "VehicleId" = $vehicle ORDER BY "Id"
        """;

    /// <summary>In the order they were set.</summary>
    public static IReadOnlyList<GoalEntry> Of(Snapshot record, Vehicle vehicle) => record.Rows.Read(OfVehicle, From, ("$vehicle", vehicle.Id));

    private static GoalEntry From(Row row)
    {
        var goal = row.Kept<GoalEntry>(row.Text("Kind") switch
        {
            "cruise" => Cruise(row),
            "hill" => Hill(row),
            "limit" => Limit(row),
            "budget" => new BudgetGoalEntry { Most = row.Money("Most") },
            var kind => throw new FormatException($"There is no kind of goal '{kind}'."),
        });
        goal.VehicleId = row.Key("VehicleId");
        return goal;
    }

    private static CruiseGoalEntry Cruise(Row row) => new()
    {
        Speed = row.Text("Speed"),
        EngineSpeed = row.Text("EngineSpeed"),
        Tolerance = row.Text("Tolerance"),
        Gear = row.Text("Gear"),
        SpeedSi = row.Number("SpeedSi"),
        EngineSpeedSi = row.Number("EngineSpeedSi"),
    };

    private static HillGoalEntry Hill(Row row) => new()
    {
        Gradient = row.Text("Gradient"),
        Speed = row.Text("Speed"),
        Gear = row.Text("Gear"),
    };

    private static LimitGoalEntry Limit(Row row) => new()
    {
        Limited = row.Word<Limited>("Limited"),
        Limit = row.Text("Limit"),
    };
}
