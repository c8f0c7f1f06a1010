using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace BuildLog.Data.Files;

/// <summary>A connection for reading, past the driver: loading that takes longer than a list of vehicles.</summary>
/// <remarks>What goes wrong is the driver's exception all the same, so that it is put into the same words.</remarks>
internal sealed class PlainConnection : IDisposable
{
    private sqlite3 handle;

    static PlainConnection() => Batteries_V2.Init();

    private PlainConnection(sqlite3 handle) => this.handle = handle;

    /// <summary>Whether it takes the file for one that nobody changes, and so sees no change.</summary>
    public bool IsOfUnchanging { get; private set; }

    /// <summary>Whether the file and its folder may be written, as far as opening them shows.</summary>
    public bool MayWrite => !IsOfUnchanging && raw.sqlite3_db_readonly(handle, "main") == 0;

    public sqlite3 Handle => handle;

    public static PlainConnection Open(string path) => Open(path, raw.SQLITE_OPEN_READWRITE);

    /// <summary>The same where nothing can be written, such as a stick that is locked.</summary>
    public static PlainConnection OpenForLooking(string path)
    {
        var connection = Open(path);
        try
        {
            connection.Ask("SELECT count(*) FROM sqlite_master");
            return connection;
        }
        catch (SqliteException cannotWrite) when (ShopConnection.HasNoRoomForItsLog(cannotWrite, path))
        {
            connection.Dispose();
            var looking = Open(ShopConnection.Unchanging(path), raw.SQLITE_OPEN_READONLY | raw.SQLITE_OPEN_URI);
            looking.IsOfUnchanging = true;
            return looking;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>Lets go of the file and looks at it anew.</summary>
    public void OpenAfresh(string path)
    {
        handle.Dispose(); // before the other: what one connection may do in it, SQLite holds true for all of a program
#pragma warning disable CA2000 // Its handle goes on as this one's.
        var other = OpenForLooking(path);
#pragma warning restore CA2000
        (handle, IsOfUnchanging) = (other.handle, other.IsOfUnchanging);
    }

    /// <summary>The first column of the first row, a whole number or text; null where there is none.</summary>
    public object? Ask(string sql) => First(sql) is [var value, ..] ? value : null;

    /// <summary>The first column of every row, which is text.</summary>
    /// <exception cref="SqliteException">It is not, as it can only be in a file that was spoilt.</exception>
    public List<string> Column(string sql)
    {
        var texts = new List<string>();
        foreach (var value in First(sql)) texts.Add(value as string ?? throw new SqliteException("A number stands where a text belongs.", raw.SQLITE_CORRUPT));
        return texts;
    }

    /// <exception cref="SqliteException">The code is no success.</exception>
    public static void Check(int code, sqlite3 handle)
    {
        if (code is not (raw.SQLITE_OK or raw.SQLITE_ROW or raw.SQLITE_DONE)) SqliteException.ThrowExceptionForRC(code, handle);
    }

    /// <summary>Ends what a reading that failed has begun.</summary>
    public void GiveUp()
    {
        if (raw.sqlite3_get_autocommit(handle) == 0) raw.sqlite3_exec(handle, "ROLLBACK");
    }

    public void Dispose() => handle.Dispose();

    private static PlainConnection Open(string path, int flags)
    {
        var code = raw.sqlite3_open_v2(path, out var handle, flags, null);
        try
        {
            Check(code, handle);
            raw.sqlite3_busy_timeout(handle, ShopConnection.LongestWait * 1000);
            return new(handle);
        }
        catch
        {
            handle.Dispose();
            throw;
        }
    }

    private List<object> First(string sql)
    {
        Check(raw.sqlite3_prepare_v2(handle, sql, out var statement), handle);
        using (statement)
        {
            var values = new List<object>();
            int code;
            while ((code = raw.sqlite3_step(statement)) == raw.SQLITE_ROW)
                values.Add(raw.sqlite3_column_type(statement, 0) == raw.SQLITE_INTEGER ? raw.sqlite3_column_int64(statement, 0) : raw.sqlite3_column_text(statement, 0).utf8_to_string());
            Check(code, handle);
            return values;
        }
    }
}
