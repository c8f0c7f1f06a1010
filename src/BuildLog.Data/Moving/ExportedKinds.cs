using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Moving;

/// <summary>One kind of entry, in the file of its own: <c>vehicles.json</c>.</summary>
internal sealed record ExportedKind(IEntityType Root, string File)
{
    /// <summary>The class of an entry by its <c>kind</c>; the only one where a table holds one class.</summary>
    public IReadOnlyDictionary<string, IEntityType> Classes { get; } =
        Root.GetDerivedTypesInclusive().Where(type => !type.ClrType.IsAbstract).ToDictionary(type => type.GetDiscriminatorValue() as string ?? "");

    public bool HasClasses => Root.FindDiscriminatorProperty() is not null;
}

internal static class ExportedKinds
{
    /// <summary>Every kind that the record keeps, each after those it names.</summary>
    public static IReadOnlyList<ExportedKind> Of(IModel model)
    {
        var left = model.GetEntityTypes().Where(type => type.BaseType is null && type.IsKept()).OrderBy(type => Matters.Of(type.ClrType)).ToList();
        var ordered = new List<ExportedKind>();
        while (left.Count > 0)
        {
            var next = left.Find(type => !Named(type).Intersect(left).Any(other => other != type)) ?? throw new InvalidOperationException("Two kinds of entries name each other.");
            left.Remove(next);
            ordered.Add(new(next, EntryShape.NameOf(next.GetTableName()!) + ".json"));
        }

        return ordered;
    }

    private static IEnumerable<IEntityType> Named(IEntityType root)
        => root.GetDerivedTypesInclusive().SelectMany(type => type.GetForeignKeys())
            .Concat(root.GetDerivedTypesInclusive().SelectMany(type => type.GetNavigations()).Where(rows => rows.IsCollection)
                .SelectMany(rows => rows.TargetEntityType.GetForeignKeys()).Where(key => !EntryShape.IsToOwner(key)))
            .Select(key => key.PrincipalEntityType.GetRootType())
            .Where(type => type.IsKept());
}
