using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using BuildLog.Data.Files;

namespace BuildLog.Data.Changes;

/// <summary>The columns of a row that changed, each with its value before and after as SQLite stores it; a column that is empty on both sides is left out.</summary>
internal sealed class RowDiff
{
    private static readonly JsonSerializerOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly List<(string Column, object? Before, object? After)> columns;

    private RowDiff(List<(string Column, object? Before, object? After)> columns) => this.columns = columns;

    public IReadOnlyList<(string Column, object? Before, object? After)> Columns => columns;

    /// <summary>Null stands for no row.</summary>
    public static RowDiff Between(StoredRow? before, StoredRow? after)
        => new([
            .. (after ?? before ?? throw new InvalidOperationException("Nothing lies between no row and no row.")).Columns
                .Select(column => (column, before?[column], after?[column]))
                .Where(change => !StoredRow.Same(change.Item2, change.Item3)),
        ]);

    /// <exception cref="RecordException">No BuildLog wrote that.</exception>
    public static RowDiff Parse(string json)
    {
        try
        {
            using var read = JsonDocument.Parse(json);
            return new([.. read.RootElement.EnumerateObject().Select(pair => (pair.Name, Value(pair.Value[0]), Value(pair.Value[1])))]);
        }
        catch (Exception spoilt) when (spoilt is JsonException or InvalidOperationException or IndexOutOfRangeException)
        {
            throw new RecordException(Fault.Damaged, Spoken($"The log of changes is damaged: one of its values cannot be read. {FileTroubles.TakeABackup}"), spoilt);
        }
    }

    public RowDiff Turned() => new([.. columns.Select(change => (change.Column, change.After, change.Before))]);

    /// <summary>The same with another change of the version, which always counts on.</summary>
    public RowDiff WithVersion(object? before, object? after)
        => new([.. columns.Select(change => change.Column == StoredRow.Version ? (change.Column, before, after) : change)]);

    public string ToJson()
    {
        var json = new JsonObject();
        foreach (var (column, before, after) in columns) json[column] = new JsonArray(Node(before), Node(after));
        return json.ToJsonString(Readable);
    }

    private static JsonValue? Node(object? value) => value switch
    {
        null => null,
        string text => JsonValue.Create(text),
        long number => JsonValue.Create(number),
        double number => JsonValue.Create(number),
        _ => throw new InvalidOperationException($"The log of changes has no way to write {value.GetType().Name}."),
    };

    private static object? Value(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.Null => null,
        JsonValueKind.String => json.GetString(),
        JsonValueKind.Number => json.TryGetInt64(out var whole) ? (object)whole : json.GetDouble(),
        _ => throw new InvalidOperationException($"The log of changes holds a {json.ValueKind}."),
    };
}
