using Microsoft.Data.Sqlite;

namespace BuildLog.Data.Changes;

/// <summary>A row of a table, column by column as SQLite stores it: text, whole number, number or nothing.</summary>
internal sealed class StoredRow(IReadOnlyList<string> columns, object?[] values)
{
    public const string Version = "Version";

    public IReadOnlyList<string> Columns => columns;

    public object? this[string column]
    {
        get
        {
            for (var k = 0; k < columns.Count; k++)
            {
                if (columns[k] == column) return values[k];
            }

            return null;
        }
    }

    /// <summary>The rows that come of a question, one after the other.</summary>
    public static IEnumerable<StoredRow> All(SqliteCommand command)
    {
        using var row = command.ExecuteReader();
        string[]? columns = null;
        while (row.Read())
        {
            columns ??= [.. Enumerable.Range(0, row.FieldCount).Select(row.GetName)];
            var stored = new object?[columns.Length];
            for (var k = 0; k < stored.Length; k++) stored[k] = row.IsDBNull(k) ? null : row.GetValue(k);
            yield return new(columns, stored);
        }
    }

    /// <summary>A column of numbers gives back 1.0 for the 1 that JSON holds.</summary>
    public static bool Same(object? one, object? other) => (one, other) switch
    {
        (double a, long b) => a.Equals((double)b),
        (long a, double b) => b.Equals((double)a),
        _ => Equals(one, other),
    };
}
