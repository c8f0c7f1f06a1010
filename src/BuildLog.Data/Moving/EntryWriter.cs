using System.Globalization;
using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Moving;

/// <summary>Writes entries out as JSON.</summary>
/// <param name="model">What entries have.</param>
/// <param name="uidOf">The stable identifier of the entry of that kind and number; null for one that does not go along.</param>
internal sealed class EntryWriter(IModel model, Func<IEntityType, long, Guid?> uidOf)
{
    private readonly Dictionary<IEntityType, EntryShape> shapes = [];

    public JsonObject Write(Kept entry)
    {
        var type = model.FindEntityType(entry.GetType())!;
        if (!shapes.TryGetValue(type, out var shape)) shapes[type] = shape = EntryShape.Of(type);

        var json = new JsonObject { ["uid"] = entry.Uid.ToString(), ["version"] = entry.Version };
        if (type.GetDiscriminatorValue() is string kind) json["kind"] = kind;
        Fill(json, shape, entry);
        return json;
    }

    private void Fill(JsonObject json, EntryShape shape, object from)
    {
        foreach (var field in shape.Fields.Where(field => !json.ContainsKey(field.Name))) json[field.Name] = Value(field, field.Info.GetValue(from));
        foreach (var (name, property, part) in shape.Parts) json[name] = property.GetValue(from) is { } value ? Filled(part, value) : null;
        foreach (var (name, navigation, row) in shape.Rows)
        {
            // The order in which rows without a number lie in one file says nothing in another.
            var rows = ((IEnumerable<object>)navigation.PropertyInfo!.GetValue(from)!).Select(each => Filled(row, each))
                .OrderBy(each => (int?)each["ordinal"]).ThenBy(each => each.ToJsonString(), StringComparer.Ordinal);
            json[name] = new JsonArray([.. rows]);
        }
    }

    private JsonObject Filled(EntryShape shape, object from)
    {
        var json = new JsonObject();
        Fill(json, shape, from);
        return json;
    }

    private JsonNode? Value(EntryShape.Field field, object? value) => value switch
    {
        null => null,
        long id when field.Names is { } kind => uidOf(kind, id)?.ToString(),
        Enum word => word.ToString(),
        DateOnly day => day.ToString("O", CultureInfo.InvariantCulture),
        Guid uid => uid.ToString(),
        string text => text,
        bool yes => yes,
        int number => number,
        long number => number,
        double number => number,
        _ => throw new InvalidOperationException($"A {field.Value.Name} cannot be exported yet."),
    };
}
