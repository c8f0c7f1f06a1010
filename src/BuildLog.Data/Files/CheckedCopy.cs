using Microsoft.Data.Sqlite;

namespace BuildLog.Data.Files;

/// <summary>Copies of a record that are whole, checked and on the disk before they take their name.</summary>
internal static class CheckedCopy
{
    /// <summary>The ending of a copy that is being made; a program that was killed meanwhile leaves it behind.</summary>
    public const string Unfinished = ".tmp";

    /// <exception cref="RecordException">There is no copy; the record is as it was.</exception>
    public static void Write(string from, string to)
    {
        using var connection = FileTroubles.Guard(from, () => ShopConnection.OpenForReading(from));
        Write(connection, from, to);
    }

    public static void Write(SqliteConnection connection, string from, string to)
    {
        var unfinished = $"{to}.{Guid.NewGuid():N}{Unfinished}";
        try
        {
            OwnerOnly.OpenFile(unfinished).Dispose();
            FileTroubles.Guard(from, () => VacuumInto(connection, unfinished), Explain);
            using (var copy = ShopConnection.OpenAlone(unfinished, readOnly: true))
            {
                if (copy.Ask("PRAGMA quick_check") is not "ok") throw new RecordException(Fault.Damaged, Spoken($"{from} is damaged: a copy of it does not check, so none was kept. {FileTroubles.TakeABackup}"));
            }

            // A file whose name is on the disk before its content would be an empty one after a power cut.
            using (var file = OwnerOnly.OpenFile(unfinished)) file.Flush(flushToDisk: true);
            FinishedName.Give(unfinished, to);
        }
        catch (Exception trouble) when (trouble is not RecordException && (Explain(trouble) ?? FileTroubles.Explain(trouble, to)) is { } explained)
        {
            throw explained;
        }
        finally
        {
            File.Delete(unfinished);
        }

        RecordException? Explain(Exception trouble) => trouble switch
        {
            SqliteException { SqliteErrorCode: 13 } => NoRoom(to, trouble),
            IOException full when IoErrors.IsDiskFull(full) => NoRoom(to, trouble),
            UnauthorizedAccessException => NoRight(to, trouble),
            IOException locked when IoErrors.IsReadOnly(locked) => NoRight(to, trouble),
            _ => null,
        };
    }

    private static bool VacuumInto(SqliteConnection connection, string to)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "VACUUM INTO $copy";
        command.Parameters.AddWithValue("$copy", to);
        command.ExecuteNonQuery();
        return true;
    }

    private static RecordException NoRoom(string to, Exception trouble)
        => new(Fault.DiskFull, Spoken($"There is no room for the copy {to}. Free some space, or name a place on another disk; the record itself is as it was."), trouble);

    private static RecordException NoRight(string to, Exception trouble)
        => new(Fault.NotWritable, Spoken($"No copy can be made in {Path.GetDirectoryName(to)}: give yourself the right to write there, or name another place. The record itself is as it was."), trouble);
}
