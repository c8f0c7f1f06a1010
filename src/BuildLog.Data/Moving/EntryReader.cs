using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.Json;
using BuildLog.Gearing.Quantities;
using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Moving;

/// <summary>Makes entries of JSON that may come from anywhere: what is not exactly as described is refused, with its place.</summary>
/// <param name="kind">What the file holds.</param>
/// <param name="idOf">The number of the entry of that kind and identifier in this file; null if there is none.</param>
/// <param name="ofEarlier">An earlier schema wrote it, which knew less.</param>
internal sealed class EntryReader(ExportedKind kind, Func<IEntityType, Guid, long?> idOf, bool ofEarlier)
{
    private readonly Dictionary<IEntityType, EntryShape> shapes = [];

    /// <exception cref="RefusedException">It is no such entry.</exception>
    public Kept Read(JsonElement json, int number)
    {
        var where = Spoken($"{kind.File}, entry {number}");
        if (json.ValueKind != JsonValueKind.Object) throw Refused(where, Spoken("is no entry"));

        var name = kind.HasClasses ? Member(json, "kind", where).GetString() ?? "" : "";
        if (!kind.Classes.TryGetValue(name, out var type)) throw Refused(where, Spoken($"has a kind {Shown.Quoted(name)} that this BuildLog does not know; a newer one wrote it"));
        if (!shapes.TryGetValue(type, out var shape)) shapes[type] = shape = EntryShape.Of(type);

        var entry = (Kept)Activator.CreateInstance(type.ClrType, nonPublic: true)!;
        Fill(entry, shape, json, where, isEntry: true);
        return entry;
    }

    private static JsonElement Member(JsonElement json, string name, string where)
        => json.TryGetProperty(name, out var member) ? member : throw Refused(where, Spoken($"lacks '{name}'"));

    private void Fill(object into, EntryShape shape, JsonElement json, string where, bool isEntry = false)
    {
        if (json.EnumerateObject().Select(member => member.Name).FirstOrDefault(name => !shape.Has(name) && !(isEntry && name is "uid" or "version" or "kind")) is { } unknown)
            throw Refused(where, Spoken($"has a field {Shown.Quoted(unknown)} that this BuildLog does not know; a newer one wrote it"));

        foreach (var field in shape.Fields)
        {
            if (IsThere(json, field.Name)) field.Info.SetValue(into, Value(field, Member(json, field.Name, where), where));
        }

        foreach (var (name, property, part) in shape.Parts)
        {
            if (IsThere(json, name) && Member(json, name, where) is { ValueKind: not JsonValueKind.Null } member) property.PropertyInfo!.SetValue(into, Made(part, member, $"{where}, {name}"));
        }

        foreach (var (name, navigation, row) in shape.Rows)
        {
            if (!IsThere(json, name)) continue;
            var rows = Member(json, name, where);
            if (rows.ValueKind != JsonValueKind.Array) throw Refused(where, Spoken($"has no list '{name}'"));
            var list = (System.Collections.IList)navigation.PropertyInfo!.GetValue(into)!;
            foreach (var each in rows.EnumerateArray()) list.Add(Made(row, each, $"{where}, {name}"));
        }
    }

    // What an earlier program did not know yet stays as it is in a new entry.
    private bool IsThere(JsonElement json, string name) => !ofEarlier || name == "uid" || json.TryGetProperty(name, out _);

    // Values and rows have no way to be made empty but this one; every field of theirs is then set.
    private object Made(EntryShape shape, JsonElement json, string where)
    {
        if (json.ValueKind != JsonValueKind.Object) throw Refused(where, Spoken("is no object"));
        var made = RuntimeHelpers.GetUninitializedObject(shape.Type.ClrType);
        Fill(made, shape, json, where);
        return made;
    }

    private object? Value(EntryShape.Field field, JsonElement json, string where)
    {
        var there = $"{where}, {field.Name}";
        if (json.ValueKind == JsonValueKind.Null) return field.Property.IsNullable ? null : throw Refused(there, Spoken("is empty"));
        if (field.Names is { } named)
        {
            if (!json.TryGetGuidText(out var uid)) throw Refused(there, Spoken("is no identifier"));
            return idOf(named, uid) ?? throw Refused(there, Spoken($"names a {Matters.Of(named.ClrType).InWords()} that is neither in the file nor in the record"));
        }

        return Read(field.Value, json) ?? throw Refused(there, Spoken($"is no {Expected(field.Value)}"));
    }

    private static object? Read(Type type, JsonElement json)
    {
        if (type == typeof(string)) return json.ValueKind == JsonValueKind.String && json.GetString() is { } text && TextRules.IsText(text) ? text : null;
        if (type == typeof(bool)) return json.ValueKind is JsonValueKind.True or JsonValueKind.False ? json.GetBoolean() : null;
        if (type == typeof(Guid)) return json.TryGetGuidText(out var uid) ? uid : null;
        if (type == typeof(DateOnly))
            return json.ValueKind == JsonValueKind.String && DateOnly.TryParseExact(json.GetString(), "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
        if (type.IsEnum)
            return json.ValueKind == JsonValueKind.String && Enum.TryParse(type, json.GetString(), out var word) && word!.ToString() == json.GetString() && Enum.IsDefined(type, word) ? word : null;
        if (json.ValueKind != JsonValueKind.Number) return null;
        if (type == typeof(int)) return json.TryGetInt32(out var number) ? number : null;
        if (type == typeof(long)) return json.TryGetInt64(out var number) ? number : null;
        if (type == typeof(double)) return json.TryGetDouble(out var number) && double.IsFinite(number) ? number : null;
        throw new InvalidOperationException($"A {type.Name} cannot be imported yet.");
    }

    private static string Expected(Type type)
        => type == typeof(string) ? Spoken("plain text")
            : type == typeof(DateOnly) ? Spoken("date such as 2026-05-03")
            : type == typeof(Guid) ? Spoken("identifier")
            : type == typeof(bool) ? Spoken("true or false")
            : type.IsEnum ? Spoken($"word of {string.Join(", ", Enum.GetNames(type))}")
            : Spoken("number");

    private static RefusedException Refused(string where, string what) => new("import", Spoken($"Nothing was imported: {where} {what}."), "");
}
