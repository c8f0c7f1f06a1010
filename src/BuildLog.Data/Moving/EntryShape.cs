using System.Reflection;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Moving;

/// <summary>What of an entry is written out, read off the model: a new column or kind is carried without another line here.</summary>
/// <remarks>Numbers that hold in one file only are left out; a reference to another entry is its stable identifier.</remarks>
internal sealed class EntryShape
{
    private readonly HashSet<string> names;

    private EntryShape(ITypeBase type)
    {
        Type = type;
        Fields = [.. type.GetProperties().Where(property => IsCarried(property)).Select(property => new Field(property)).OrderBy(field => field.Name, StringComparer.Ordinal)];
        Parts = [.. type.GetComplexProperties().Select(part => (NameOf(part.Name), part, new EntryShape(part.ComplexType)))];
        Rows = type is IEntityType entity
            ? [.. entity.GetNavigations().Where(rows => rows.IsCollection && !rows.TargetEntityType.IsKept()).Select(rows => (NameOf(rows.Name), rows, new EntryShape(rows.TargetEntityType)))]
            : [];
        names = Fields.Select(field => field.Name).Concat(Parts.Select(part => part.Name)).Concat(Rows.Select(row => row.Name)).ToHashSet(StringComparer.Ordinal);
    }

    public ITypeBase Type { get; }

    public IReadOnlyList<Field> Fields { get; }

    /// <summary>Values of several columns, such as money.</summary>
    public IReadOnlyList<(string Name, IComplexProperty Property, EntryShape Shape)> Parts { get; }

    /// <summary>Rows that are part of it.</summary>
    public IReadOnlyList<(string Name, INavigation Navigation, EntryShape Shape)> Rows { get; }

    /// <summary>It has something of that name.</summary>
    public bool Has(string name) => names.Contains(name);

    public static EntryShape Of(IEntityType kind) => new(kind);

    public static string NameOf(string property) => JsonNamingPolicy.CamelCase.ConvertName(property);

    /// <summary>A row lies within what it belongs to, and need not name it. Some rows may belong to either of two.</summary>
    public static bool IsToOwner(IReadOnlyForeignKey key) => key.PrincipalToDependent is not null;

    /// <summary>A note or a paper: about an entry of any kind.</summary>
    public static bool IsAbout(IReadOnlyEntityType root) => root.FindProperty("AboutUid") is not null;

    private static bool IsCarried(IProperty property)
        => property.PropertyInfo is { } info
            && !property.IsPrimaryKey()
            && !property.GetContainingForeignKeys().Any(IsToOwner)
            && info.GetCustomAttribute<FollowsAttribute>() is null;

    /// <summary>One column.</summary>
    internal sealed class Field
    {
        public Field(IProperty property)
        {
            Property = property;
            Names = property.GetContainingForeignKeys().FirstOrDefault(key => key.PrincipalEntityType.IsKept())?.PrincipalEntityType;
            Name = NameOf(Names is null ? property.Name : property.Name[..^2]);
            Column = property.GetColumnName();
        }

        public IProperty Property { get; }

        public string Column { get; }

        public PropertyInfo Info => Property.PropertyInfo!;

        public string Name { get; }

        /// <summary>The kind of entry it names; null for a plain value.</summary>
        public IEntityType? Names { get; }

        public Type Value => Nullable.GetUnderlyingType(Property.ClrType) ?? Property.ClrType;
    }
}

/// <summary>Follows from what else is entered, so that it is not carried to another file.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class FollowsAttribute : Attribute;
