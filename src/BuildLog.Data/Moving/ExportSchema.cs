using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Moving;

/// <summary>The JSON Schema (draft 2020-12) of every file of entries in an export, read off the same model that writes them.</summary>
internal static class ExportSchema
{
    public static JsonObject Of(IModel model)
    {
        var files = new JsonObject();
        var kinds = new JsonObject();
        foreach (var kind in ExportedKinds.Of(model))
        {
            foreach (var (word, type) in kind.Classes.OrderBy(known => known.Key, StringComparer.Ordinal)) kinds[type.ClrType.Name] = Entry(EntryShape.Of(type), kind.HasClasses ? word : null);
            files[kind.File] = new JsonObject
            {
                ["type"] = "array",
                ["items"] = kind.HasClasses
                    ? new JsonObject { ["oneOf"] = new JsonArray([.. kind.Classes.Values.Select(type => Reference(type.ClrType.Name)).OrderBy(each => each.ToJsonString(), StringComparer.Ordinal)]) }
                    : Reference(kind.Root.ClrType.Name),
            };
        }

        return new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "BuildLog export, version " + ExportFormat.Version.ToString(System.Globalization.CultureInfo.InvariantCulture),
            ["description"] = "One property for each file of the zip; each file holds the array described under its name.",
            ["type"] = "object",
            ["properties"] = files,
            ["additionalProperties"] = false,
            ["$defs"] = kinds,
        };
    }

    private static JsonObject Entry(EntryShape shape, string? kind)
    {
        var entry = Described(shape);
        if (kind is not null)
        {
            ((JsonObject)entry["properties"]!).Insert(0, "kind", new JsonObject { ["const"] = kind });
            ((JsonArray)entry["required"]!).Insert(0, "kind");
        }

        return entry;
    }

    private static JsonObject Described(EntryShape shape)
    {
        var properties = new JsonObject();
        foreach (var field in shape.Fields) properties[field.Name] = Value(field);
        foreach (var (name, _, part) in shape.Parts) properties[name] = new JsonObject { ["oneOf"] = new JsonArray(Described(part), new JsonObject { ["type"] = "null" }) };
        foreach (var (name, _, row) in shape.Rows) properties[name] = new JsonObject { ["type"] = "array", ["items"] = Described(row) };
        return new()
        {
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = new JsonArray([.. properties.Select(property => JsonValue.Create(property.Key))]),
            ["additionalProperties"] = false,
        };
    }

    private static JsonObject Value(EntryShape.Field field)
    {
        var (type, format) = Type(field);
        var value = new JsonObject { ["type"] = field.Property.IsNullable ? new JsonArray(type, "null") : type };
        if (format is not null) value["format"] = format;
        if (field.Value.IsEnum)
        {
            var words = Enum.GetNames(field.Value).Select(word => (JsonNode?)JsonValue.Create(word));
            value["enum"] = new JsonArray([.. words, .. field.Property.IsNullable ? (JsonNode?[])[null] : []]);
        }

        if (field.Names is { } named) value["description"] = $"uid of a {Matters.Of(named.ClrType).InWords()}";
        return value;
    }

    private static (string Type, string? Format) Type(EntryShape.Field field)
    {
        if (field.Names is not null || field.Value == typeof(Guid)) return ("string", "uuid");
        if (field.Value == typeof(DateOnly)) return ("string", "date");
        if (field.Value == typeof(string) || field.Value.IsEnum) return ("string", null);
        if (field.Value == typeof(bool)) return ("boolean", null);
        return (field.Value == typeof(double) ? "number" : "integer", null);
    }

    private static JsonObject Reference(string name) => new() { ["$ref"] = "#/$defs/" + name };
}
