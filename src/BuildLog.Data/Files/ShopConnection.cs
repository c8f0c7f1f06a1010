using Microsoft.Data.Sqlite;

namespace BuildLog.Data.Files;

/// <summary>How the file is connected to.</summary>
internal static class ShopConnection
{
    /// <remarks>
    /// A write waits three seconds for another writer, so that a screen does not freeze for the driver's usual thirty. Pooling is on: closing a
    /// file in write-ahead mode for the last time folds its log in, which is too slow for every call.
    /// </remarks>
    public static string StringFor(string path, bool pooled = true, bool readOnly = false) => new SqliteConnectionStringBuilder
    {
        DataSource = path,
        ForeignKeys = true,
        DefaultTimeout = 3,
        Pooling = pooled,
        Mode = readOnly ? SqliteOpenMode.ReadOnly : SqliteOpenMode.ReadWrite,
    }.ToString();

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
}
