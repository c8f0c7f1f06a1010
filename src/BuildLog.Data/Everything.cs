using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data;

/// <summary>Records of a kind that is known only while the program runs.</summary>
internal static class Everything
{
    /// <summary>What the table holds is a record of its own, and no row that is part of one.</summary>
    public static bool IsKept(this IReadOnlyTypeBase type) => typeof(Kept).IsAssignableFrom(type.ClrType);

    /// <summary>The kinds of row that lie in a table; the one they have in common comes first.</summary>
    public static IEnumerable<IEntityType> In(ShopContext db, string table)
        => db.Model.GetEntityTypes().Where(type => type.GetTableName() == table).OrderBy(type => type.BaseType is not null);

    public static IQueryable<Kept> Of(ShopContext db, Type kind)
        => (IQueryable<Kept>)typeof(ShopContext).GetMethod(nameof(ShopContext.Set), [])!.MakeGenericMethod(kind).Invoke(db, null)!;

    /// <summary>The records that refer to one by this key.</summary>
    public static IQueryable<Kept> Referring(ShopContext db, IForeignKey key, long to)
    {
        var column = key.Properties[0].Name;
        return Of(db, key.DeclaringEntityType.ClrType).Where(record => EF.Property<long?>(record, column) == to);
    }
}
