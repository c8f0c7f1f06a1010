using System.Linq.Expressions;
using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Fitments;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace BuildLog.Data;

/// <summary>What the tables themselves insist on, should anything but this program write to the file.</summary>
/// <remarks>A CHECK lets NULL pass, so a rule for a column that may be empty need not say so.</remarks>
internal static class TableRules
{
    public static EntityTypeBuilder<T> Rule<T>(this EntityTypeBuilder<T> entity, string name, string sql)
        where T : class
        => entity.ToTable(table => table.HasCheckConstraint($"CK_{entity.Metadata.GetTableName()}_{name}", sql));

    public static EntityTypeBuilder<T> Filled<T>(this EntityTypeBuilder<T> entity, string column)
        where T : class
        => entity.Rule(column, $"length(trim(\"{column}\")) > 0");

    /// <summary>A day of the calendar: 30 February is none.</summary>
    public static EntityTypeBuilder<T> Day<T>(this EntityTypeBuilder<T> entity, string column)
        where T : class
        => entity.Rule(column, $"\"{column}\" IS date(\"{column}\")");

    public static EntityTypeBuilder<T> OneOf<T>(this EntityTypeBuilder<T> entity, string column, params IEnumerable<string> words)
        where T : class
        => entity.Rule(column, $"\"{column}\" IN ({string.Join(", ", words.Select(word => $"'{word}'"))})");

    /// <summary>A column of words: those of the enumeration and no others.</summary>
    public static EntityTypeBuilder<T> Words<T, TWords>(this EntityTypeBuilder<T> entity, Expression<Func<T, TWords>> word)
        where T : class
        where TWords : struct, Enum
    {
        entity.Property(word).HasConversion<string>();
        return entity.OneOf(NameOf(word), Enum.GetNames<TWords>());
    }

    /// <summary>The same where the word may be missing.</summary>
    public static EntityTypeBuilder<T> Words<T, TWords>(this EntityTypeBuilder<T> entity, Expression<Func<T, TWords?>> word)
        where T : class
        where TWords : struct, Enum
    {
        entity.Property(word).HasConversion<string>();
        return entity.OneOf(NameOf(word), Enum.GetNames<TWords>());
    }

    /// <summary>All of the columns are filled, or none.</summary>
    public static EntityTypeBuilder<T> AllOrNone<T>(this EntityTypeBuilder<T> entity, string name, params IReadOnlyList<string> columns)
        where T : class
        => entity.Rule(name, FormattableString.Invariant($"{string.Join(" + ", columns.Select(column => $"(\"{column}\" IS NULL)"))} IN (0, {columns.Count})"));

    /// <summary>Rows of this kind have these columns filled; other kinds leave them empty.</summary>
    public static EntityTypeBuilder<T> Needs<T>(this EntityTypeBuilder<T> entity, string kindColumn, string kind, params IEnumerable<string> columns)
        where T : class
        => entity.Rule(kind.Replace(' ', '_'), $"\"{kindColumn}\" <> '{kind}' OR ({string.Join(" AND ", columns.Select(column => $"\"{column}\" IS NOT NULL"))})");

    /// <summary>A number noted down: four columns, all there or none, in a range that only nonsense leaves.</summary>
    public static EntityTypeBuilder<T> Noted<T>(this EntityTypeBuilder<T> entity, Expression<Func<T, Noted?>> number, double low, double high)
        where T : class
    {
        var name = NameOf(number);
        entity.ComplexProperty(number, noted =>
        {
            noted.Property(n => n!.Si).HasColumnName($"{name}Si");
            noted.Property(n => n!.Unit).HasColumnName($"{name}Unit");
            noted.Property(n => n!.Text).HasColumnName($"{name}Text");
            noted.Property(n => n!.Source).HasColumnName($"{name}Source").HasConversion<string>();
        });
        return entity
            .AllOrNone(name, $"{name}Si", $"{name}Unit", $"{name}Text", $"{name}Source")
            .Rule($"{name}Si", FormattableString.Invariant($"\"{name}Si\" BETWEEN {low:0.0######} AND {high:0.0######}"))
            .OneOf($"{name}Source", Enum.GetNames<Source>());
    }

    /// <summary>An amount of money: both columns, or none.</summary>
    public static EntityTypeBuilder<T> Money<T>(this EntityTypeBuilder<T> entity, Expression<Func<T, Money?>> amount)
        where T : class
    {
        var name = NameOf(amount);
        entity.ComplexProperty(amount, money =>
        {
            money.Property(m => m!.Minor).HasColumnName($"{name}Minor");
            money.Property(m => m!.Currency).HasColumnName($"{name}Currency");
        });
        return entity
            .AllOrNone(name, $"{name}Minor", $"{name}Currency")
            .Rule($"{name}Minor", $"\"{name}Minor\" BETWEEN -1000000000000000 AND 1000000000000000")
            .Rule($"{name}Currency", $"\"{name}Currency\" GLOB '[A-Z][A-Z][A-Z]'");
    }

    /// <summary>A day as typed, with its bounds; without a text there are none.</summary>
    public static EntityTypeBuilder<T> LooseDay<T>(this EntityTypeBuilder<T> entity, Expression<Func<T, LooseDay?>> day)
        where T : class
    {
        var name = NameOf(day);
        entity.ComplexProperty(day, loose =>
        {
            loose.Property(d => d!.Text).HasColumnName($"{name}Text");
            loose.Property(d => d!.Earliest).HasColumnName($"{name}Earliest");
            loose.Property(d => d!.Latest).HasColumnName($"{name}Latest");
            loose.Ignore(d => d!.IsExact);
            loose.Ignore(d => d!.InWords);
        });
        return entity
            .Day($"{name}Earliest")
            .Day($"{name}Latest")
            .Rule(name, $"""("{name}Text" IS NOT NULL OR ("{name}Earliest" IS NULL AND "{name}Latest" IS NULL)) AND ("{name}Earliest" IS NULL OR "{name}Latest" IS NULL OR "{name}Earliest" <= "{name}Latest")""");
    }

    /// <summary>The day an entry is about: the one it is reckoned on, and what was typed where that leaves it open.</summary>
    public static EntityTypeBuilder<T> Dated<T>(this EntityTypeBuilder<T> entity)
        where T : Dated
    {
        entity.Ignore(dated => dated.Day);
        return entity.Day("Date").LooseDay(dated => dated.DateAsTyped).Within("Date", "DateAsTyped");
    }

    /// <summary>The day something is reckoned on lies within what was typed of it.</summary>
    public static EntityTypeBuilder<T> Within<T>(this EntityTypeBuilder<T> entity, string day, string asTyped)
        where T : class
        => entity.Rule($"{day}Within", $"""("{asTyped}Text" IS NULL OR "{day}" IS NOT NULL) AND ("{asTyped}Earliest" IS NULL OR "{asTyped}Earliest" <= "{day}") AND ("{asTyped}Latest" IS NULL OR "{day}" <= "{asTyped}Latest")""");

    /// <summary>What an odometer showed: all of its columns, or none.</summary>
    public static EntityTypeBuilder<T> Odometer<T>(this EntityTypeBuilder<T> entity, Expression<Func<T, OdometerReading?>> reading, string end)
        where T : class
    {
        entity.ComplexProperty(reading, odometer =>
        {
            odometer.Property(o => o!.Metres).HasColumnName($"{end}OdometerMetres");
            odometer.Property(o => o!.Unit).HasColumnName($"{end}OdometerUnit");
            odometer.Property(o => o!.Text).HasColumnName($"{end}OdometerText");
        });
        return entity.AllOrNone($"{end}Odometer", $"{end}OdometerMetres", $"{end}OdometerUnit", $"{end}OdometerText")
            .Rule($"{end}OdometerMetres", $"\"{end}OdometerMetres\" BETWEEN 0 AND 10000000000");
    }

    /// <remarks>The range is Gearing's: where it is widened there, a migration has to follow here, and a test says so.</remarks>
    public static EntityTypeBuilder<T> Noted<T>(this EntityTypeBuilder<T> entity, Expression<Func<T, Noted?>> ratio, RatioRange range)
        where T : class
        => entity.Noted(ratio, range.Low, range.High);

    public static EntityTypeBuilder<T> Noted<T>(this EntityTypeBuilder<T> entity, Expression<Func<T, Noted?>> number, SpecLine line)
        where T : class
        => entity.Noted(number, line.Low, line.High);

    private static string NameOf<T, TValue>(Expression<Func<T, TValue>> property) => ((MemberExpression)property.Body).Member.Name;
}
