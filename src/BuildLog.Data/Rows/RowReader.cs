using System.Globalization;
using System.Text;
using BuildLog.Data.Files;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace BuildLog.Data.Rows;

/// <summary>Reads rows by hand: the object mapper takes longer to load than all else, and asks twenty questions where six do.</summary>
/// <remarks>Its prepared questions are kept for the next time, as long as its connection is open. One thread at a time.</remarks>
internal sealed class RowReader : IDisposable
{
    private readonly Dictionary<string, Question> questions = [];
    private readonly PlainConnection? own;
    private readonly SqliteConnection? shared;

    /// <summary>On a connection of its own.</summary>
    /// <param name="own">The connection.</param>
    /// <param name="isKept">It outlives the reader.</param>
    public RowReader(PlainConnection own, bool isKept = false) => (this.own, IsKept) = (own, isKept);

    /// <summary>Within whatever is under way on another's connection.</summary>
    public RowReader(SqliteConnection shared) => this.shared = shared;

    /// <summary>Whether its connection outlives it.</summary>
    public bool IsKept { get; }

    private sqlite3 Handle => own?.Handle ?? shared?.Handle ?? throw new InvalidOperationException("Nothing is read from a connection that is closed.");

    /// <summary>What is read meanwhile comes from one state of the file.</summary>
    public T FromOneState<T>(Func<Snapshot, T> read)
    {
        // By hand: the driver's own transaction would begin with a lock.
        Read("BEGIN", _ => 0);
        var result = read(new(this));
        Read("COMMIT", _ => 0);
        return result;
    }

    public List<T> Read<T>(string sql, Func<Row, T> make, params ReadOnlySpan<(string Name, object Value)> given)
    {
        if (!questions.TryGetValue(sql, out var question)) questions[sql] = question = new(Handle, sql);
        return question.Answer(make, given);
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
        questions.Clear();
        if (IsKept) own?.GiveUp();
        else own?.Dispose();
    }
}
