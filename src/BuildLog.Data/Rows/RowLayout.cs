using System.Collections;
using System.Runtime.CompilerServices;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Rows;

/// <summary>How things of one kind lie in their table, asked of the model once: a new kind needs no line here.</summary>
internal sealed class RowLayout
{
    private static readonly ConditionalWeakTable<IEntityType, RowLayout> Known = [];

    private readonly List<(string Name, Func<object, long?, object?> Value)> columns = [];
    private readonly IProperty key;

    private RowLayout(IEntityType type, IProperty? owner)
    {
        key = type.FindPrimaryKey()!.Properties[0];
        Table = type.GetTableName()!;
        foreach (var property in type.GetProperties().Where(property => property != key))
        {
            var value = property == owner ? (_, of) => of
                : property.Name == type.GetDiscriminatorPropertyName() ? Always(type.GetDiscriminatorValue())
                : Of(property, thing => thing);
            columns.Add((property.GetColumnName(), value));
        }

        foreach (var number in type.GetComplexProperties())
        {
            foreach (var property in number.ComplexType.GetProperties()) columns.Add((property.GetColumnName(), Of(property, thing => number.PropertyInfo!.GetValue(thing))));
        }

        Insert = $"INSERT INTO \"{Table}\" ({string.Join(", ", columns.Select(column => $"\"{column.Name}\""))}) VALUES ({string.Join(", ", columns.Select((_, k) => FormattableString.Invariant($"${k}")))}) RETURNING \"{key.GetColumnName()}\"";
        Below = [
            .. type.GetNavigations().Where(navigation => navigation.IsCollection && !navigation.TargetEntityType.IsKept())
                .Select(navigation => ((Func<object, IEnumerable>)(thing => (IEnumerable)navigation.PropertyInfo!.GetValue(thing)!), new RowLayout(navigation.TargetEntityType, navigation.ForeignKey.Properties[0]))),
        ];
    }

    public string Table { get; }

    /// <summary>Asks for the number of the new row.</summary>
    public string Insert { get; }

    /// <summary>The rows that are part of it, in tables of their own.</summary>
    public IReadOnlyList<(Func<object, IEnumerable> Rows, RowLayout Layout)> Below { get; }

    public static RowLayout Of(IEntityType type) => Known.GetValue(type, type => new(type, owner: null));

    /// <summary>In the order of <see cref="Insert"/>.</summary>
    /// <param name="thing">What the row says.</param>
    /// <param name="owner">The row it is part of.</param>
    public object?[] Values(object thing, long? owner) => [.. columns.Select(column => column.Value(thing, owner))];

    public void Number(object thing, long id) => key.PropertyInfo!.SetValue(thing, id);

    private static Func<object, long?, object?> Always(object? value) => (_, _) => value;

    private static Func<object, long?, object?> Of(IProperty property, Func<object, object?> from)
    {
        var convert = property.GetTypeMapping().Converter?.ConvertToProvider ?? (value => value);
        return (thing, _) => from(thing) is { } whole && property.PropertyInfo!.GetValue(whole) is { } value ? convert(value) : null;
    }
}
