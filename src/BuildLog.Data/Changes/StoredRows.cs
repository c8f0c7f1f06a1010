using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace BuildLog.Data.Changes;

/// <summary>Reads and writes single rows of any table, within the transaction of the change.</summary>
/// <remarks>By hand and not by the object mapper: what is taken back has to come back exactly as it was stored, column by column.</remarks>
internal sealed class StoredRows(ShopContext db) : IDisposable
{
    // Prepared once each, for as long as the connection is kept.
    private readonly Dictionary<string, SqliteCommand> commands = [];

    public StoredRow? Read(string table, long id) => Row($"SELECT * FROM {Quoted(table)} WHERE \"Id\" = $0", id);

    /// <summary>The one row that comes of it; null if none does.</summary>
    public StoredRow? Row(string sql, params IReadOnlyList<object?> values) => StoredRow.All(Command(sql, values)).FirstOrDefault();

    public void Insert(string table, IReadOnlyList<(string Column, object? Value)> values) => Run(
        $"INSERT INTO {Quoted(table)} ({string.Join(", ", values.Select(value => Quoted(value.Column)))}) VALUES ({string.Join(", ", values.Select((_, k) => Parameter(k)))})",
        [.. values.Select(value => value.Value)]);

    public void Update(string table, long id, IReadOnlyList<(string Column, object? Value)> values) => Run(
        $"UPDATE {Quoted(table)} SET {string.Join(", ", values.Select((value, k) => $"{Quoted(value.Column)} = {Parameter(k)}"))} WHERE \"Id\" = {Parameter(values.Count)}",
        [.. values.Select(value => value.Value), id]);

    public void Delete(string table, long id) => Run($"DELETE FROM {Quoted(table)} WHERE \"Id\" = $0", id);

    public void Run(string sql, params IReadOnlyList<object?> values)
    {
        var command = Command(sql, values);
        command.ExecuteNonQuery();
    }

    public object? Ask(string sql, params IReadOnlyList<object?> values)
    {
        var command = Command(sql, values);
        return command.ExecuteScalar() is { } answer and not DBNull ? answer : null;
    }

    /// <summary>A command with its values as <c>$0</c>, <c>$1</c> …; it is kept, for the next time that the same is asked.</summary>
    public SqliteCommand Command(string sql, params IReadOnlyList<object?> values)
    {
        if (!commands.TryGetValue(sql, out var command)) commands[sql] = command = NewCommand(sql, values.Count);
        return With(command, values);
    }

    /// <summary>One that is not kept: whoever asked disposes it.</summary>
    public SqliteCommand NewCommand(string sql, int values)
    {
        var command = ((SqliteConnection)db.Database.GetDbConnection()).CreateCommand();
#pragma warning disable CA2100 // Only this assembly's own texts and the names of its tables come here.
        command.CommandText = sql;
#pragma warning restore CA2100
        for (var k = 0; k < values; k++) command.Parameters.Add(new() { ParameterName = Parameter(k) });
        return command;
    }

    public SqliteCommand With(SqliteCommand command, params IReadOnlyList<object?> values)
    {
        command.Transaction = (SqliteTransaction?)db.Database.CurrentTransaction?.GetDbTransaction();
        for (var k = 0; k < values.Count; k++)
        {
            // A text that was there before must not leave its length or its type behind.
            command.Parameters[k].ResetSqliteType();
            command.Parameters[k].Value = values[k] ?? DBNull.Value;
        }

        return command;
    }

    public void Dispose()
    {
        foreach (var command in commands.Values) command.Dispose();
        commands.Clear();
    }

    private static string Parameter(int k) => FormattableString.Invariant($"${k}");

    private static string Quoted(string name) => $"\"{name}\"";
}
