using System.IO.Compression;
using System.Text.Json;
using Microsoft.Data.Sqlite;

namespace BuildLog.Benchmarks.Record;

/// <summary>The rows of the bulk record out to a zip of JSON and in again, by hand: no stable names, no checks, no log, no search index.</summary>
internal static class RawMoves
{
    private static readonly string[] Tables = ["Vehicles", "Components", "Fitments", "Sessions", "Readings"];

    public static void Export(SqliteConnection from, string file)
    {
        using var zip = new ZipArchive(File.Create(file), ZipArchiveMode.Create);
        foreach (var table in Tables)
        {
            using var entry = zip.CreateEntry(table).Open();
            using var json = new Utf8JsonWriter(entry);
            using var row = BulkRecord.Command(from, $"SELECT * FROM {table}").ExecuteReader();
            json.WriteStartArray();
            while (row.Read())
            {
                json.WriteStartObject();
                for (var k = 0; k < row.FieldCount; k++)
                {
                    json.WritePropertyName(row.GetName(k));
                    if (row.IsDBNull(k)) json.WriteNullValue();
                    else if (row.GetFieldType(k) == typeof(long)) json.WriteNumberValue(row.GetInt64(k));
                    else json.WriteStringValue(row.GetString(k));
                }

                json.WriteEndObject();
                json.Flush();
            }

            json.WriteEndArray();
        }
    }

    /// <param name="file">What <see cref="Export"/> wrote.</param>
    /// <param name="into">A record without these rows.</param>
    public static void Import(string file, SqliteConnection into)
    {
        using var zip = ZipFile.OpenRead(file);
        using var whole = into.BeginTransaction();
        foreach (var table in Tables)
        {
            using var entry = zip.GetEntry(table)!.Open();
            using var rows = JsonDocument.Parse(entry);
            SqliteCommand? insert = null;
            foreach (var row in rows.RootElement.EnumerateArray())
            {
                var fields = row.EnumerateObject().ToList();
                insert ??= BulkRecord.Command(into, $"INSERT INTO {table} ({string.Join(',', fields.Select(field => field.Name))}) VALUES ({string.Join(',', fields.Select((_, k) => $"${k}"))})");
                insert.Parameters.Clear();
                for (var k = 0; k < fields.Count; k++) insert.Parameters.AddWithValue($"${k}", Value(fields[k].Value));
                insert.ExecuteNonQuery();
            }

            insert?.Dispose();
        }

        whole.Commit();
    }

    private static object Value(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Null => DBNull.Value,
        JsonValueKind.Number => value.GetInt64(),
        _ => value.GetString()!,
    };
}
