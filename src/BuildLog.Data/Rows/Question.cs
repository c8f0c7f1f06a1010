using Microsoft.Data.Sqlite;

namespace BuildLog.Data.Rows;

/// <summary>One SELECT, prepared when it is asked for the first time.</summary>
internal sealed class Question : IDisposable
{
    private readonly SqliteCommand command;
    private Dictionary<string, int>? columns;

    public Question(SqliteConnection connection, string sql)
    {
        command = connection.CreateCommand();
#pragma warning disable CA2100 // Only this assembly's own texts come here.
        command.CommandText = sql;
#pragma warning restore CA2100
    }

    public List<T> Answer<T>(Func<Row, T> make, SqliteTransaction? transaction, params ReadOnlySpan<(string Name, object Value)> given)
    {
        command.Transaction = transaction;
        foreach (var (name, value) in given)
        {
            if (command.Parameters.Contains(name)) command.Parameters[name].Value = value;
            else command.Parameters.AddWithValue(name, value);
        }

        using var reader = command.ExecuteReader();
        columns ??= ColumnsOf(reader);
        var row = new Row(reader, columns);
        var answer = new List<T>();
        while (reader.Read()) answer.Add(make(row));
        return answer;
    }

    public void Dispose() => command.Dispose();

    private static Dictionary<string, int> ColumnsOf(SqliteDataReader reader)
    {
        var columns = new Dictionary<string, int>(reader.FieldCount);
        for (var k = 0; k < reader.FieldCount; k++) columns[reader.GetName(k)] = k;
        return columns;
    }
}
