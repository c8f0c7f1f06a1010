using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Changes;

/// <summary>What a row is part of, and which vehicle and part it speaks of; found by following what it refers to.</summary>
internal static class Belonging
{
    // A work entry belongs to a job, and that to a vehicle; nothing lies deeper than this.
    private const int Deepest = 4;

    /// <summary>The record that a changed row is, or is part of.</summary>
    public static Kept RecordOf(ShopContext db, EntityEntry row)
    {
        if (row.Entity is Kept record) return record;

        foreach (var key in row.Metadata.GetForeignKeys().Where(key => key.PrincipalEntityType.IsKept()))
        {
            // What was taken out has let go of its owner already.
            var id = row.Property(key.Properties[0].Name);
            if ((id.CurrentValue ?? id.OriginalValue) is long owner && db.Find(key.PrincipalEntityType.ClrType, owner) is Kept found) return found;
        }

        throw new InvalidOperationException($"A row of {row.Metadata.GetTableName()} belongs to nothing in the record.");
    }

    public static long? VehicleOf(ShopContext db, Kept record) => VehicleOf(db, record, 0);

    public static long? ComponentOf(ShopContext db, Kept record)
        => record is Component ? record.Id : References(db, record).FirstOrDefault(to => to.Type.ClrType == typeof(Component)).Id;

    private static long? VehicleOf(ShopContext db, Kept record, int depth)
    {
        if (record is Vehicle) return record.Id;
        var references = References(db, record).ToList();
        if (references.FirstOrDefault(to => to.Type.ClrType == typeof(Vehicle)).Id is { } vehicle) return vehicle;
        if (depth == Deepest) return null;

        return references
            .Where(to => to.Required && to.Type.ClrType != typeof(Component))
            .Select(to => db.Find(to.Type.ClrType, to.Id!.Value) is Kept parent ? VehicleOf(db, parent, depth + 1) : null)
            .FirstOrDefault(id => id is not null);
    }

    private static IEnumerable<(IReadOnlyEntityType Type, long? Id, bool Required)> References(ShopContext db, Kept record)
        => db.Model.FindEntityType(record.GetType())!.GetForeignKeys()
            .Where(key => key.PrincipalEntityType.IsKept())
            .Select(key => ((IReadOnlyEntityType)key.PrincipalEntityType, key.Properties[0].PropertyInfo?.GetValue(record) as long?, key.IsRequired))
            .Where(reference => reference.Item2 is not null);
}
