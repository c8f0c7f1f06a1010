using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace BuildLog.Data.Changes;

/// <summary>Reads and writes single rows of any table, within the transaction of the change.</summary>
/// <remarks>By hand and not by the object mapper: what is taken back has to come back exactly as it was stored, column by column.</remarks>
internal sealed class StoredRows(ShopContext db)
{
    private readonly SqliteConnection connection = (SqliteConnection)db.Database.GetDbConnection();
    private readonly DbTransaction? transaction = db.Database.CurrentTransaction?.GetDbTransaction();

    public StoredRow? Read(string table, long id)
    {
        using var command = Command($"SELECT * FROM {Quoted(table)} WHERE \"Id\" = $0", id);
        using var row = command.ExecuteReader();
        if (!row.Read()) return null;

        var (columns, values) = (new string[row.FieldCount], new object?[row.FieldCount]);
        for (var k = 0; k < values.Length; k++) (columns[k], values[k]) = (row.GetName(k), row.IsDBNull(k) ? null : row.GetValue(k));
        return new(columns, values);
    }

    public void Insert(string table, IReadOnlyList<(string Column, object? Value)> values) => Run(
        $"INSERT INTO {Quoted(table)} ({string.Join(", ", values.Select(value => Quoted(value.Column)))}) VALUES ({string.Join(", ", values.Select((_, k) => Parameter(k)))})",
        [.. values.Select(value => value.Value)]);

    public void Update(string table, long id, IReadOnlyList<(string Column, object? Value)> values) => Run(
        $"UPDATE {Quoted(table)} SET {string.Join(", ", values.Select((value, k) => $"{Quoted(value.Column)} = {Parameter(k)}"))} WHERE \"Id\" = {Parameter(values.Count)}",
        [.. values.Select(value => value.Value), id]);

    public void Delete(string table, long id) => Run($"DELETE FROM {Quoted(table)} WHERE \"Id\" = $0", id);

    public void Run(string sql, params IReadOnlyList<object?> values)
    {
        using var command = Command(sql, values);
        command.ExecuteNonQuery();
    }

    public object? Ask(string sql, params IReadOnlyList<object?> values)
    {
        using var command = Command(sql, values);
        return command.ExecuteScalar() is { } answer and not DBNull ? answer : null;
    }

    /// <summary>A command with its values as <c>$0</c>, <c>$1</c> …</summary>
    public SqliteCommand Command(string sql, params IReadOnlyList<object?> values)
    {
        var command = connection.CreateCommand();
        command.Transaction = (SqliteTransaction?)transaction;
#pragma warning disable CA2100 // Only this assembly's own texts and the names of its tables come here.
        command.CommandText = sql;
#pragma warning restore CA2100
        for (var k = 0; k < values.Count; k++) command.Parameters.AddWithValue(Parameter(k), values[k] ?? DBNull.Value);
        return command;
    }

    private static string Parameter(int k) => FormattableString.Invariant($"${k}");

    private static string Quoted(string name) => $"\"{name}\"";
}
