using BuildLog.Data.Components;
using BuildLog.Data.Rows;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;

namespace BuildLog.Data.Fitments;

/// <summary>Reads fitments by hand, each with its part and its vehicle.</summary>
internal static class FitmentReader
{
    private const string OfVehicle = """SELECT * FROM "Fitments" WHERE "VehicleId" = $vehicle""";

    private const string OfPart = """SELECT * FROM "Fitments" WHERE "ComponentId" = $part""";

    private const string OfVehicleOnADay =
        """
        SELECT * FROM "Fitments" WHERE "VehicleId" = $vehicle
            AND (("FromDate" <= $day AND ("ToDate" IS NULL OR "ToDate" > $day)) OR "FromAsTypedText" IS NOT NULL OR "ToAsTypedText" IS NOT NULL)
        """;

    private const string Standing = """SELECT * FROM "Fitments" WHERE "ToDate" IS NULL""";

    private const string LastOfTheLoose =
        """
        SELECT * FROM "Fitments" AS "Last" WHERE NOT EXISTS (
            SELECT 1 FROM "Fitments" AS "Later" WHERE "Later"."ComponentId" = "Last"."ComponentId"
                AND ("Later"."ToDate" IS NULL OR ("Later"."ToDate", "Later"."ToOrder") > ("Last"."ToDate", "Last"."ToOrder")))
        """;

    /// <summary>From the first to the last.</summary>
    public static IReadOnlyList<Fitment> Of(Snapshot record, long vehicleId) => Joined(record, record.Rows.Read(OfVehicle, From, ("$vehicle", vehicleId)));

    /// <summary>Those of a part, on whichever vehicle, from the first to the last.</summary>
    public static IReadOnlyList<Fitment> Of(Snapshot record, Component component) => Joined(record, record.Rows.Read(OfPart, From, ("$part", component.Id)));

    /// <summary>Those that held at the end of a day, and those that may have, as their days are not known to the day.</summary>
    public static IReadOnlyList<Fitment> On(Snapshot record, Vehicle vehicle, DateOnly day)
        => Joined(record, record.Rows.Read(OfVehicleOnADay, From, ("$vehicle", vehicle.Id), ("$day", FormattableString.Invariant($"{day:O}"))));

    /// <summary>Those that hold now, on whichever vehicle.</summary>
    public static IReadOnlyList<Fitment> Now(Snapshot record) => Joined(record, record.Rows.Read(Standing, From));

    /// <summary>Of each part that was fitted once and is not now, the fitment it came off last.</summary>
    public static IReadOnlyList<Fitment> LastOfLooseParts(Snapshot record) => Joined(record, record.Rows.Read(LastOfTheLoose, From));

    private static IReadOnlyList<Fitment> Joined(Snapshot record, List<Fitment> fitments)
    {
        record.Components.Load(fitments.Select(fitment => (long?)fitment.ComponentId));
        record.Vehicles.Load(fitments.Select(fitment => (long?)fitment.VehicleId));
        foreach (var fitment in fitments)
        {
            fitment.Component = record.Components[fitment.ComponentId];
            fitment.Vehicle = record.Vehicles[fitment.VehicleId];
        }

        return [.. fitments.OrderBy(fitment => fitment.Start)];
    }

    private static Fitment From(Row row) => row.Kept(new Fitment
    {
        ComponentId = row.Key("ComponentId"),
        VehicleId = row.Key("VehicleId"),
        Position = row.Word<Position>("Position"),
        From = row.Day("FromDate"),
        FromOrder = row.Count("FromOrder"),
        FromAsTyped = row.LooseDay("FromAsTyped"),
        FromOdometer = row.Odometer("From"),
        Reason = row.Text("Reason"),
        To = row.DayIfAny("ToDate"),
        ToOrder = row.CountIfAny("ToOrder"),
        ToAsTyped = row.LooseDay("ToAsTyped"),
        ToOdometer = row.Odometer("To"),
        ReasonOff = row.Text("ReasonOff"),
    });
}
