using System.Text.Json.Nodes;
using BuildLog.Data.Changes;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Moving;

/// <summary>Writes entries out as JSON.</summary>
/// <param name="record">Where their rows lie.</param>
/// <param name="uidOf">The stable identifier of an entry; null for one that does not go along.</param>
internal sealed class EntryWriter(StoredEntries record, Func<EntryPlace, Guid?> uidOf)
{
    private readonly Dictionary<IEntityType, EntryShape> shapes = [];

    public JsonObject Write(ExportedKind kind, StoredRow row)
    {
        var word = kind.HasClasses ? (string)row[kind.Root.FindDiscriminatorProperty()!.GetColumnName()]! : "";
        var type = kind.Classes[word];
        if (!shapes.TryGetValue(type, out var shape)) shapes[type] = shape = EntryShape.Of(type);

        var json = new JsonObject { ["uid"] = Guid.Parse((string)row["Uid"]!).ToString(), ["version"] = (long)row[StoredRow.Version]! };
        if (kind.HasClasses) json["kind"] = word;
        Fill(json, shape, row);
        return json;
    }

    private void Fill(JsonObject json, EntryShape shape, StoredRow row)
    {
        foreach (var field in shape.Fields)
        {
            if (!json.ContainsKey(field.Name)) json[field.Name] = Value(field, row[field.Column]);
        }

        foreach (var (name, property, part) in shape.Parts) json[name] = part.Fields.All(field => row[field.Column] is null) && property.IsNullable ? null : Filled(part, row);
        foreach (var (name, navigation, below) in shape.Rows)
        {
            // The order in which rows without a number lie in one file says nothing in another.
            var rows = record.With(navigation.TargetEntityType.GetTableName()!, navigation.ForeignKey.Properties[0].GetColumnName(), row["Id"]!).Select(each => Filled(below, each))
                .OrderBy(each => (int?)each["ordinal"]).ThenBy(each => each.ToJsonString(), StringComparer.Ordinal);
            json[name] = new JsonArray([.. rows]);
        }
    }

    private JsonObject Filled(EntryShape shape, StoredRow row)
    {
        var json = new JsonObject();
        Fill(json, shape, row);
        return json;
    }

    // Words and days are stored as they are written.
    private JsonNode? Value(EntryShape.Field field, object? stored) => stored switch
    {
        null => null,
        long id when field.Names is { } kind => uidOf(new(kind.GetRootType(), id))?.ToString(),
        string text when field.Value == typeof(Guid) => Guid.Parse(text).ToString(),
        long yes when field.Value == typeof(bool) => yes != 0,
        long number when field.Value == typeof(double) => (double)number,
        string text when field.Value == typeof(string) || field.Value == typeof(DateOnly) || field.Value.IsEnum => text,
        long number when field.Value == typeof(int) => (int)number,
        long number when field.Value == typeof(long) => number,
        double number when field.Value == typeof(double) => number,
        _ => throw new InvalidOperationException($"A {field.Value.Name} cannot be exported yet."),
    };
}
