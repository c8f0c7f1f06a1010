using System.Collections;
using System.Runtime.CompilerServices;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Rows;

/// <summary>How things of one kind lie in their table, asked of the model once: a new kind needs no line here.</summary>
internal sealed class RowLayout
{
    private static readonly ConditionalWeakTable<IEntityType, RowLayout> Known = [];

    private readonly List<(string Name, Func<object, object?> Value)> columns = [];
    private readonly IProperty key;
    private readonly IProperty? owner;

    private RowLayout(IEntityType type, IProperty? owner)
    {
        (key, this.owner) = (type.FindPrimaryKey()!.Properties[0], owner);
        Table = type.GetTableName()!;
        var kind = type.GetDiscriminatorValue();
        foreach (var property in type.GetProperties().Where(property => property != key))
        {
            columns.Add((property.GetColumnName(), property.Name == type.GetDiscriminatorPropertyName() ? _ => kind : Of(property, thing => thing)));
        }

        foreach (var number in type.GetComplexProperties())
        {
            foreach (var property in number.ComplexType.GetProperties()) columns.Add((property.GetColumnName(), Of(property, thing => number.PropertyInfo!.GetValue(thing))));
        }

        Insert = $"INSERT INTO \"{Table}\" ({string.Join(", ", columns.Select(column => $"\"{column.Name}\""))}) VALUES ({string.Join(", ", columns.Select((_, k) => FormattableString.Invariant($"${k}")))}) RETURNING *";
        Below = [
            .. type.GetNavigations().Where(navigation => navigation.IsCollection && !navigation.TargetEntityType.IsKept())
                .Select(navigation => ((Func<object, IEnumerable>)(thing => (IEnumerable)navigation.PropertyInfo!.GetValue(thing)!), new RowLayout(navigation.TargetEntityType, navigation.ForeignKey.Properties[0]))),
        ];
    }

    public string Table { get; }

    /// <summary>Asks for the new row as it is stored.</summary>
    public string Insert { get; }

    /// <summary>The rows that are part of it, in tables of their own.</summary>
    public IReadOnlyList<(Func<object, IEnumerable> Rows, RowLayout Layout)> Below { get; }

    public static RowLayout Of(IEntityType type) => Known.GetValue(type, type => new(type, owner: null));

    /// <summary>In the order of <see cref="Insert"/>.</summary>
    public object?[] Values(object thing) => [.. columns.Select(column => column.Value(thing))];

    /// <summary>Tells a row which one it is part of.</summary>
    public void Own(object row, long id) => owner!.PropertyInfo!.SetValue(row, id);

    /// <summary>Tells it the number it got.</summary>
    public void Number(object thing, long id) => key.PropertyInfo!.SetValue(thing, id);

    private static Func<object, object?> Of(IProperty property, Func<object, object?> from)
    {
        var convert = property.GetTypeMapping().Converter?.ConvertToProvider ?? (value => value);
        return thing => from(thing) is { } whole && property.PropertyInfo!.GetValue(whole) is { } value ? convert(value) : null;
    }
}
