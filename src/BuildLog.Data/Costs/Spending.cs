using BuildLog.Data.Rows;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Costs;

/// <summary>What was spent on which day: all that sums need of a cost, read by hand.</summary>
internal sealed record Spending(DateOnly Date, Money Amount)
{
    private const string OfVehicle = """SELECT "Date", "AmountMinor", "AmountCurrency" FROM "Costs" WHERE "VehicleId" = $vehicle""";

    public static IReadOnlyList<Spending> On(Snapshot record, Vehicle vehicle)
        => record.Rows.Read(OfVehicle, row => new Spending(row.Day("Date"), row.Money("Amount")!), ("$vehicle", vehicle.Id));
}
