using System.Globalization;
using System.Text;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace BuildLog.Data.Rows;

/// <summary>Reads rows by hand: the object mapper takes longer to load than all else, and asks twenty questions where six do.</summary>
/// <remarks>Its connection and its prepared questions are kept for the next time. One thread at a time.</remarks>
/// <param name="connection">Where it reads.</param>
/// <param name="isOwn">It ends with the reader.</param>
internal sealed class RowReader(SqliteConnection connection, bool isOwn) : IDisposable
{
    private readonly Dictionary<string, Question> questions = [];

    /// <summary>What it reads within.</summary>
    public SqliteTransaction? Within { get; set; }

    /// <summary>What is read meanwhile comes from one state of the file.</summary>
    public T FromOneState<T>(Func<Snapshot, T> read)
    {
        // Ended whatever happens, for a connection may outlive this reader. By hand: an object for it would begin with a lock.
        Read("BEGIN", _ => 0);
        try
        {
            return read(new(this));
        }
        finally
        {
            if (raw.sqlite3_get_autocommit(connection.Handle) == 0) Read("COMMIT", _ => 0);
        }
    }

    public List<T> Read<T>(string sql, Func<Row, T> make, params ReadOnlySpan<(string Name, object Value)> given)
    {
        if (!questions.TryGetValue(sql, out var question)) questions[sql] = question = new(connection, sql);
        return question.Answer(make, Within, given);
    }

    /// <summary>The rows that some numbers name; the text asks for them with <c>IN (SELECT value FROM json_each($ids))</c>.</summary>
    public List<T> Read<T>(string sql, Func<Row, T> make, IReadOnlyCollection<long> ids)
        => ids.Count == 0 ? [] : Read(sql, make, ("$ids", Listed(ids)));

    /// <summary>Numbers as <c>json_each</c> reads them.</summary>
    /// <remarks>Written out: joining numbers is compiled only when a program runs, which a short command waits for.</remarks>
    public static string Listed(IEnumerable<long> ids)
    {
        var list = new StringBuilder("[");
        foreach (var id in ids) list.Append(list.Length == 1 ? "" : ",").Append(id.ToString(CultureInfo.InvariantCulture));
        return list.Append(']').ToString();
    }

    public void Dispose()
    {
        foreach (var question in questions.Values) question.Dispose();
        if (isOwn) connection.Dispose();
    }
}
