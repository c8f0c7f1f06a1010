using Microsoft.Data.Sqlite;

namespace BuildLog.Data.Files;

/// <summary>Holds a record for this program alone, with its write-ahead log folded in and gone, so that the file can be replaced.</summary>
/// <remarks>Every open <see cref="Shop"/> keeps a hand on its file; SQLite leaves write-ahead mode only for the last one.</remarks>
internal sealed class SoleUse : IDisposable
{
    private SoleUse(SqliteConnection connection) => Connection = connection;

    public SqliteConnection Connection { get; }

    /// <exception cref="RecordException">Another program has it open, or it is no sound database.</exception>
    public static SoleUse Take(string path) => FileTroubles.Guard(
        path,
        () =>
        {
            var connection = ShopConnection.OpenAlone(path);
            try
            {
                if (connection.Ask("PRAGMA journal_mode = DELETE") is not "delete") throw Busy(path, null);

                // In this mode the lock that a transaction takes is kept after it.
                connection.Run("PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE; COMMIT");
                return new SoleUse(connection);
            }
            catch
            {
                connection.Dispose();
                throw;
            }
        },
        trouble => trouble is SqliteException { SqliteErrorCode: 5 or 6 } ? Busy(path, trouble) : null);

    /// <summary>Leaves the file as it was found.</summary>
    public void GiveBack() => Connection.Run("PRAGMA journal_mode = WAL");

    public void Dispose() => Connection.Dispose();

    private static RecordException Busy(string path, Exception? trouble)
        => new(Fault.Busy, Spoken($"Another program has {path} open. Close it and try again; nothing was changed."), trouble);
}
