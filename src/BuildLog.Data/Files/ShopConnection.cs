using Microsoft.Data.Sqlite;

namespace BuildLog.Data.Files;

/// <summary>How the file is connected to.</summary>
internal static class ShopConnection
{
    /// <summary>For another writer, in seconds.</summary>
    public const int LongestWait = 3;

    /// <remarks>
    /// A write waits three seconds for another writer, so that a screen does not freeze for the driver's usual thirty. Pooling is on: closing a
    /// file in write-ahead mode for the last time folds its log in, which is too slow for every call.
    /// </remarks>
    public static string StringFor(string path, bool pooled = true, bool readOnly = false)
    {
        // The driver's builder would load expressions to quote one path, which a list of vehicles waits for.
        var quoted = path.Replace("\"", "\"\"", StringComparison.Ordinal);
        return FormattableString.Invariant($"Data Source=\"{quoted}\";Mode={(readOnly ? "ReadOnly" : "ReadWrite")};Foreign Keys=True;Default Timeout={LongestWait};Pooling={pooled}");
    }

    /// <summary>An open connection outside the pool, for opening, migrating and backing up.</summary>
    public static SqliteConnection OpenAlone(string path, bool readOnly = false)
    {
        var connection = new SqliteConnection(StringFor(path, pooled: false, readOnly));
        try
        {
            connection.Open();
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>The same for looking only: also where nothing can be written, such as a stick that is locked.</summary>
    public static SqliteConnection OpenForReading(string path)
    {
        var connection = OpenAlone(path);
        try
        {
            connection.Ask("SELECT count(*) FROM sqlite_master");
            return connection;
        }
        catch (SqliteException cannotWrite) when (HasNoRoomForItsLog(cannotWrite, path))
        {
            connection.Dispose();
            return OpenAlone(Unchanging(path), readOnly: true);
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>A file in write-ahead mode needs room for its log beside it even to be read, unless SQLite is told that nobody can change it.</summary>
    internal static bool HasNoRoomForItsLog(SqliteException cannotWrite, string path) => cannotWrite.SqliteErrorCode is 8 or 14 && !File.Exists(path + "-wal");

    /// <summary>Tells SQLite that nobody can change the file.</summary>
    internal static string Unchanging(string path) => $"file:{Uri.EscapeDataString(path)}?immutable=1";

    public static void Run(this SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only this assembly's own texts come here.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }

    public static object? Ask(this SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only this assembly's own texts come here.
        command.CommandText = sql;
#pragma warning restore CA2100
        return command.ExecuteScalar();
    }

    /// <summary>The first column of every row, as text.</summary>
    public static IReadOnlyList<string> Column(this SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only this assembly's own texts come here.
        command.CommandText = sql;
#pragma warning restore CA2100
        using var row = command.ExecuteReader();
        var values = new List<string>();
        while (row.Read()) values.Add(row.GetString(0));
        return values;
    }
}
