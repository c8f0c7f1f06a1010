using BuildLog.Data.Components;
using BuildLog.Data.Rows;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Specs;

/// <summary>Reads by hand what is noted of parts and vehicles under headings, in numbers and in words.</summary>
internal static class SpecReader
{
    private const string SpecsOfParts =
        """
        SELECT * FROM "Specs" WHERE "ComponentId" IN (SELECT value FROM json_each($ids)) ORDER BY "ComponentId", "Spec"
        """;

    private const string SpecsOfVehicles =
        """
        SELECT * FROM "Specs" WHERE "VehicleId" IN (SELECT value FROM json_each($ids)) ORDER BY "VehicleId", "Spec"
        """;

    private const string TraitsOfParts =
        """
        SELECT * FROM "Traits" WHERE "ComponentId" IN (SELECT value FROM json_each($ids)) ORDER BY "ComponentId", "Trait"
        """;

    public static void Fill(Snapshot record, List<Component> components)
    {
        var byId = ById(components);
        foreach (var spec in record.Rows.Read(SpecsOfParts, From, byId.Keys)) byId[spec.ComponentId!.Value].Specs.Add(spec);
        foreach (var trait in record.Rows.Read(TraitsOfParts, TraitFrom, byId.Keys)) byId[trait.ComponentId].Traits.Add(trait);
    }

    public static void Fill(Snapshot record, List<Vehicle> vehicles)
    {
        var byId = ById(vehicles);
        foreach (var spec in record.Rows.Read(SpecsOfVehicles, From, byId.Keys)) byId[spec.VehicleId!.Value].Specs.Add(spec);
    }

    private static Dictionary<long, T> ById<T>(List<T> records)
        where T : Kept
    {
        var byId = new Dictionary<long, T>(records.Count);
        foreach (var record in records) byId.Add(record.Id, record);
        return byId;
    }

    private static SpecRow From(Row row) => new()
    {
        Id = row.Key("Id"),
        ComponentId = row.KeyIfAny("ComponentId"),
        VehicleId = row.KeyIfAny("VehicleId"),
        Spec = row.Word<Spec>("Spec"),
        Number = row.Noted("Number")!,
    };

    private static TraitRow TraitFrom(Row row) => new()
    {
        Id = row.Key("Id"),
        ComponentId = row.Key("ComponentId"),
        Trait = row.Word<Trait>("Trait"),
        Text = row.Text("Text"),
    };
}
