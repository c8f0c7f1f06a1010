using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Search;

/// <remarks>The index over it is made by <see cref="Files.Triggers"/>, which also keeps it in step.</remarks>
internal static class FindableMapping
{
    public static void Map(ModelBuilder model)
    {
        var findable = model.Entity<Findable>().ToTable("Findables");
        findable.HasIndex(f => f.RecordUid).IsUnique();
        findable.HasIndex(f => f.VehicleId);
        findable.HasIndex(f => f.ComponentId);
        findable.Filled("Kind").Day("Day");
    }
}
