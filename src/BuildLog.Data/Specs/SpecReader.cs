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

    public static void Fill(Snapshot record, IReadOnlyDictionary<long, Component> components)
    {
        foreach (var spec in record.Rows.Read(SpecsOfParts, From, [.. components.Keys])) components[spec.ComponentId!.Value].Specs.Add(spec);
        foreach (var trait in record.Rows.Read(TraitsOfParts, TraitFrom, [.. components.Keys])) components[trait.ComponentId].Traits.Add(trait);
    }

    public static void Fill(Snapshot record, IReadOnlyDictionary<long, Vehicle> vehicles)
    {
        foreach (var spec in record.Rows.Read(SpecsOfVehicles, From, [.. vehicles.Keys])) vehicles[spec.VehicleId!.Value].Specs.Add(spec);
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
