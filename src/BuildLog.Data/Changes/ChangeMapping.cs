using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Changes;

/// <remarks>That both tables are only added to is guarded by <see cref="Files.Triggers"/>. What they speak of may be gone, so they refer to nothing else.</remarks>
internal static class ChangeMapping
{
    public static void Map(ModelBuilder model)
    {
        var set = model.Entity<ChangeSet>().ToTable("ChangeSets");
        set.Property(s => s.At);
        set.Ignore(s => s.When);
        set.Ignore(s => s.Fields);
        set.HasOne<ChangeSet>().WithMany().HasForeignKey(s => s.UndoesId).OnDelete(DeleteBehavior.Restrict);
        set.HasIndex(s => s.UndoesId).IsUnique();
        set.HasIndex(s => s.Step).HasFilter("\"Step\" = 'Undo'");
        set.Filled("At").Filled("Label").Words(s => s.Step).Rule("Undoes", """("Step" = 'Forward') = ("UndoesId" IS NULL) AND ("UndoesId" IS NULL OR "UndoesId" < "Id")""");
        set.HasMany(s => s.Rows).WithOne().HasForeignKey(row => row.ChangeSetId).OnDelete(DeleteBehavior.Restrict);

        var row = model.Entity<ChangeRow>().ToTable("Changes");
        row.Ignore(r => r.Stayed);
        row.HasIndex(r => r.RecordUid);
        row.HasIndex(r => new { r.TableName, r.RowId });
        row.HasIndex(r => r.VehicleId);
        row.Words(r => r.Op).Rule("Diff", "json_valid(\"Diff\")");
    }
}
