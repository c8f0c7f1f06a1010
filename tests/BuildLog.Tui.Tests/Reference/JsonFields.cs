using System.Text.Json;

namespace BuildLog.Tui.Tests.Reference;

/// <summary>The shape of a command's answers: the fields of all of them, of a list those of all its entries.</summary>
internal static class JsonFields
{
    public static string Of(IReadOnlyList<JsonElement> alike)
    {
        var objects = alike.Where(one => one.ValueKind == JsonValueKind.Object).ToList();
        if (objects.Count > 0)
        {
            var fields = objects.SelectMany(one => one.EnumerateObject()).GroupBy(field => field.Name, StringComparer.Ordinal);
            return $"{{{string.Join(", ", fields.Select(field => $"{field.Key} {Of([.. field.Select(each => each.Value)])}".TrimEnd()))}}}";
        }

        var lists = alike.Where(one => one.ValueKind == JsonValueKind.Array).ToList();
        return lists.Count > 0 ? $"[{Of([.. lists.SelectMany(list => list.EnumerateArray())])}]" : "";
    }
}
