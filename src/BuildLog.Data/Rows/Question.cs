using BuildLog.Data.Files;
using SQLitePCL;

namespace BuildLog.Data.Rows;

/// <summary>One SELECT, prepared when it is asked for the first time.</summary>
internal sealed class Question : IDisposable
{
    private readonly sqlite3 handle;
    private readonly sqlite3_stmt statement;
    private readonly Dictionary<string, int> columns;

    public Question(sqlite3 handle, string sql)
    {
        this.handle = handle;
        PlainConnection.Check(raw.sqlite3_prepare_v2(handle, sql, out statement), handle);
        columns = new(raw.sqlite3_column_count(statement));
        for (var k = 0; k < raw.sqlite3_column_count(statement); k++) columns[raw.sqlite3_column_name(statement, k).utf8_to_string()] = k;
    }

    public List<T> Answer<T>(Func<Row, T> make, params ReadOnlySpan<(string Name, object Value)> given)
    {
        foreach (var (name, value) in given) Bind(raw.sqlite3_bind_parameter_index(statement, name), value);
        try
        {
            var row = new Row(statement, columns);
            var answer = new List<T>();
            int code;
            while ((code = raw.sqlite3_step(statement)) == raw.SQLITE_ROW) answer.Add(make(row));
            PlainConnection.Check(code, handle);
            return answer;
        }
        finally
        {
            raw.sqlite3_reset(statement);
        }
    }

    public void Dispose() => statement.Dispose();

    private void Bind(int at, object value)
        => PlainConnection.Check(
            value switch
            {
                long number => raw.sqlite3_bind_int64(statement, at, number),
                string text => raw.sqlite3_bind_text(statement, at, text),
                Guid uid => raw.sqlite3_bind_text(statement, at, uid.ToString().ToUpperInvariant()),
                _ => throw new ArgumentOutOfRangeException(nameof(value), value, "Nothing of that kind is asked for."),
            },
            handle);
}
