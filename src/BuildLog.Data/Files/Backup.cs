using BuildLog.Data.Attachments;
using Microsoft.Data.Sqlite;

namespace BuildLog.Data.Files;

/// <summary>Copies of the record.</summary>
public static class Backup
{
    /// <summary>Copies the record with its attachments to a place of the owner's choice.</summary>
    /// <param name="path">The record.</param>
    /// <param name="target">The copy; its attachments go to a folder of its name beside it.</param>
    /// <param name="overwrite">Replace a copy of that name, though nothing that is no record.</param>
    /// <exception cref="RecordException">There is no copy, and what was there is as it was.</exception>
    public static BackupResult To(string path, string target, bool overwrite)
    {
        var (record, copy) = (Path.GetFullPath(path), Path.GetFullPath(target));
        CheckTarget(record, copy, overwrite);

        // The record first: a file is stored before the row that names it, so that no row in the copy lacks its file.
        using (var connection = FileTroubles.Guard(record, () => ShopConnection.OpenForReading(record)))
        {
            // Read from, the record is in use; a copy that would go over it by another name of the same file is then refused.
            connection.Ask("SELECT count(*) FROM sqlite_master");
            if (File.Exists(copy)) SoleUse.Take(copy).Dispose();
            CheckedCopy.Write(connection, record, copy);
        }

        var attachments = FileTroubles.Guard(copy, () => AttachmentStore.Beside(record).CopyTo(AttachmentStore.Beside(copy)));
        return new(copy, new FileInfo(copy).Length, attachments);
    }

    /// <summary>Takes the day's copy of a record that holds something, at the first start of that day, and lets the oldest go.</summary>
    /// <remarks>Attachments need none: they never change once they are stored.</remarks>
    /// <returns>The copy; null where there was nothing to do.</returns>
    /// <exception cref="RecordException">It could not be made. That is no reason to stop working.</exception>
    public static string? OfTheDay(string path, DateOnly day)
    {
        var record = Path.GetFullPath(path);
        var backups = new BackupFolder(record);
        var copy = backups.OfDay(day);
        if (File.Exists(copy)) return null;

        return FileTroubles.Guard(record, () =>
        {
            using (var connection = ShopConnection.OpenForReading(record))
            {
                if (connection.Ask("SELECT EXISTS (SELECT 1 FROM Vehicles) OR EXISTS (SELECT 1 FROM Components)") is not 1L) return null;
                backups.Make();
                CheckedCopy.Write(connection, record, copy);
            }

            backups.Rotate();
            return copy;
        });
    }

    /// <summary>The whole record as it was before a change of schema.</summary>
    internal static string BeforeMigration(SqliteConnection connection, string path)
    {
        var copy = new BackupFolder(path).Before("migration");
        CheckedCopy.Write(connection, path, copy);
        return copy;
    }

    private static void CheckTarget(string record, string copy, bool overwrite)
    {
        if (!File.Exists(record)) throw new RecordException(Fault.NoRecord, Spoken($"There is no record at {record} to copy. Name another file with --database."));
        WholeFile.Beside(record, copy, overwrite, "shop-backup.db");
        if (File.Exists(copy) && !IsRecord(copy)) throw new RecordException(Fault.NotOurs, Spoken($"{copy} is no record of BuildLog, so it was not replaced. Name another file."));
    }

    private static bool IsRecord(string copy)
    {
        try
        {
            return OpeningCheck.IsOurs(copy);
        }
        catch (RecordException unreadable) when (unreadable.Fault is Fault.NotADatabase or Fault.Damaged)
        {
            return false;
        }
    }
}

/// <summary>A copy that was made.</summary>
/// <param name="File">The copy.</param>
/// <param name="Bytes">Its size, without the attachments.</param>
/// <param name="Attachments">What became of the attachments.</param>
public sealed record BackupResult(string File, long Bytes, AttachmentsCopied Attachments);
