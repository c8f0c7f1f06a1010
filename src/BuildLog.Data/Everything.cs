using System.Linq.Expressions;
using System.Reflection;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data;

/// <summary>Records of a kind that is known only while the program runs.</summary>
internal static class Everything
{
    private static readonly MethodInfo All = typeof(Everything).GetMethod(nameof(AllOf), BindingFlags.NonPublic | BindingFlags.Static)!;
    private static readonly MethodInfo Hanging = typeof(Everything).GetMethod(nameof(HangingOn), BindingFlags.NonPublic | BindingFlags.Static)!;

    public static IEnumerable<Kept> Of(ShopContext db, Type kind) => (IEnumerable<Kept>)All.MakeGenericMethod(kind).Invoke(null, [db])!;

    /// <summary>The records that refer to one by this key.</summary>
    public static IReadOnlyList<Kept> Referring(ShopContext db, IForeignKey key, long to)
        => (IReadOnlyList<Kept>)Hanging.MakeGenericMethod(key.DeclaringEntityType.ClrType).Invoke(null, [db, key.Properties[0].Name, key.Properties[0].ClrType, to])!;

    private static IEnumerable<Kept> AllOf<T>(ShopContext db)
        where T : Kept
        => db.Set<T>().AsSplitQuery().OrderBy(record => record.Id);

    private static IReadOnlyList<Kept> HangingOn<T>(ShopContext db, string key, Type keyType, long to)
        where T : Kept
    {
        var record = Expression.Parameter(typeof(T));
        var value = Expression.Call(typeof(EF), nameof(EF.Property), [keyType], record, Expression.Constant(key));
        return [.. db.Set<T>().Where(Expression.Lambda<Func<T, bool>>(Expression.Equal(value, Expression.Constant(to, keyType)), record))];
    }
}
