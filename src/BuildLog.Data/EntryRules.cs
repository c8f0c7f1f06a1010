using System.Linq.Expressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace BuildLog.Data;

/// <summary>What every table of entries has, and how entries hang on each other. Deleting is done by the program, row by row, where a log can see it.</summary>
internal static class EntryRules
{
    public static EntityTypeBuilder<T> Entry<T>(this ModelBuilder model, string table)
        where T : Kept
    {
        var entity = model.Entity<T>().ToTable(table);
        entity.Property(entry => entry.Version).IsConcurrencyToken();
        entity.HasIndex(entry => entry.Uid).IsUnique();
        return entity;
    }

    /// <summary>It belongs to one of those, which stays as long as it does.</summary>
    public static EntityTypeBuilder<T> Of<T, TOwner>(this EntityTypeBuilder<T> entity, Expression<Func<T, object?>> key)
        where T : class
        where TOwner : Kept
    {
        entity.HasOne<TOwner>().WithMany().HasForeignKey(key).OnDelete(DeleteBehavior.Restrict);
        return entity;
    }

    /// <summary>It names another entry, which is loaded with it.</summary>
    public static EntityTypeBuilder<T> With<T, TOther>(this EntityTypeBuilder<T> entity, Expression<Func<T, TOther?>> other)
        where T : class
        where TOther : Kept
    {
        var name = ((MemberExpression)other.Body).Member.Name;
        entity.HasOne(other).WithMany().OnDelete(DeleteBehavior.Restrict);
        entity.Navigation(name).AutoInclude();
        return entity;
    }

    /// <summary>Rows that are part of it.</summary>
    public static EntityTypeBuilder<T> Rows<T, TRow>(this EntityTypeBuilder<T> entity, Expression<Func<T, IEnumerable<TRow>?>> rows, Expression<Func<TRow, object?>> key)
        where T : class
        where TRow : class
    {
        entity.HasMany(rows).WithOne().HasForeignKey(key).OnDelete(DeleteBehavior.ClientCascade);
        entity.Navigation(((MemberExpression)rows.Body).Member.Name).AutoInclude();
        return entity;
    }
}
