using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace BuildLog.Data;

/// <summary>What the tables themselves insist on, should anything but this program write to the file.</summary>
internal static class TableRules
{
    public static void Filled<T>(this TableBuilder<T> table, string column)
        where T : class
        => table.HasCheckConstraint($"CK_{table.Name}_{column}", $"length(trim(\"{column}\")) > 0");

    /// <summary>One of the words of an enumeration.</summary>
    public static void OneOf<T, TWords>(this TableBuilder<T> table, string column)
        where T : class
        where TWords : struct, Enum
        => table.HasCheckConstraint($"CK_{table.Name}_{column}", $"\"{column}\" IN ({Quoted(Enum.GetNames<TWords>())})");

    public static void OneOf<T>(this TableBuilder<T> table, string column, params IEnumerable<string> words)
        where T : class
        => table.HasCheckConstraint($"CK_{table.Name}_{column}", $"\"{column}\" IN ({Quoted(words)})");

    /// <summary>A day of the calendar: 30 February is none.</summary>
    public static void Day<T>(this TableBuilder<T> table, string column)
        where T : class
        => table.HasCheckConstraint($"CK_{table.Name}_{column}", $"\"{column}\" IS date(\"{column}\")");

    public static void Rule<T>(this TableBuilder<T> table, string name, string sql)
        where T : class
        => table.HasCheckConstraint($"CK_{table.Name}_{name}", sql);

    /// <summary>Maps a number noted down to its four columns: all there or none.</summary>
    public static void Noted<T>(this EntityTypeBuilder<T> entity, System.Linq.Expressions.Expression<Func<T, Noted?>> number, double low, double high)
        where T : class
    {
        var name = ((System.Linq.Expressions.MemberExpression)number.Body).Member.Name;
        entity.ComplexProperty(number, noted =>
        {
            noted.Property(n => n!.Si).HasColumnName($"{name}Si");
            noted.Property(n => n!.Unit).HasColumnName($"{name}Unit");
            noted.Property(n => n!.Text).HasColumnName($"{name}Text");
            noted.Property(n => n!.Source).HasColumnName($"{name}Source").HasConversion<string>();
        });
        entity.ToTable(table =>
        {
            table.Rule($"{name}Whole", $"(\"{name}Si\" IS NULL) + (\"{name}Unit\" IS NULL) + (\"{name}Text\" IS NULL) + (\"{name}Source\" IS NULL) IN (0, 4)");
            table.Rule($"{name}Range", FormattableString.Invariant($"\"{name}Si\" BETWEEN {low:0.0###} AND {high:0.0###}"));
            table.OneOf<T, Gearing.Measurements.Source>($"{name}Source");
        });
    }

    private static string Quoted(IEnumerable<string> words) => string.Join(", ", words.Select(word => $"'{word}'"));
}
