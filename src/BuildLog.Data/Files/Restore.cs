using BuildLog.Data.Attachments;

namespace BuildLog.Data.Files;

/// <summary>Puts a copy in the record's place.</summary>
public static class Restore
{
    /// <remarks>The copy is prepared and checked beside the record; only then do the two change places, in one step of the file system.</remarks>
    /// <param name="backup">The copy, which stays as it is.</param>
    /// <param name="path">The record; what it holds is kept among its backups.</param>
    /// <exception cref="RecordException">The record is as it was.</exception>
    public static RestoreResult From(string backup, string path)
    {
        var (source, record) = (Path.GetFullPath(backup), Path.GetFullPath(path));
        if (source == record) throw new RecordException(Fault.Exists, Spoken($"{source} is the record itself. Name the copy to restore."));
        CheckSource(source);
        OpeningCheck.CheckFolder(record, isDefault: record == ShopFile.DefaultPath());

        using var alone = FileTroubles.Guard(record, () => MigrationLock.Take(record));
        var fresh = $"{record}.{Guid.NewGuid():N}{CheckedCopy.Unfinished}";
        try
        {
            var migrated = FileTroubles.Guard(record, () => Prepare(source, fresh));
            var attachments = FileTroubles.Guard(record, () => AttachmentStore.Beside(source).CopyTo(AttachmentStore.Beside(record)));
            var kept = FileTroubles.Guard(record, () => Replace(record, fresh));
            return new(record, source, migrated, kept, attachments);
        }
        finally
        {
            Delete(fresh);
        }
    }

    private static void CheckSource(string source)
    {
        if (Directory.Exists(source)) throw new RecordException(Fault.Folder, Spoken($"{source} is a folder. Name the file in it, such as {Path.Combine(source, "shop.2026-05-03.db")}."));
        if (!File.Exists(source)) throw new RecordException(Fault.NoRecord, Spoken($"There is no file {source}. Copies lie in the folder backups beside the record."));
        try
        {
            FileTroubles.Guard(source, () => OpeningCheck.Look(source));
        }
        catch (RecordException refused) when (refused.Fault is Fault.Empty or Fault.NotADatabase or Fault.NotOurs)
        {
            throw new RecordException(refused.Fault, Spoken($"{source} is no copy of a BuildLog record. Nothing was changed; name another file."), refused);
        }
        catch (RecordException refused) when (refused.Fault is Fault.Damaged)
        {
            throw Damaged(source, refused);
        }
    }

    /// <summary>Whether the copy was of an older schema.</summary>
    private static bool Prepare(string source, string fresh)
    {
        try
        {
            CheckedCopy.Write(source, fresh);
        }
        catch (RecordException refused) when (refused.Fault is Fault.Damaged)
        {
            throw Damaged(source, refused);
        }

        using (var connection = ShopConnection.OpenAlone(fresh))
        {
            if (connection.Ask("PRAGMA integrity_check") is not "ok" || connection.Ask("PRAGMA foreign_key_check") is not null) throw Damaged(source, null);
        }

        var older = OpeningCheck.Look(fresh) == OpeningCheck.State.Older;
        if (older) Migrating.Migrate(fresh);
        else Migrating.Finish(fresh);
        return older;
    }

    private static RecordException Damaged(string source, RecordException? refused)
        => new(Fault.Damaged, Spoken($"{source} is damaged. Nothing was changed; take an older copy."), refused);

    private static string? Replace(string record, string fresh)
    {
        if (!File.Exists(record) || new FileInfo(record).Length == 0)
        {
            Swap(record, fresh);
            return null;
        }

        var kept = new BackupFolder(record).Before("restore");
        try
        {
            if (!OpeningCheck.IsOurs(record)) throw new RecordException(Fault.NotOurs, Spoken($"{record} is a database of another program. It was not touched; name another file with --database."));
            using var held = SoleUse.Take(record);
            try
            {
                CheckedCopy.Write(held.Connection, record, kept);
            }
            catch
            {
                held.GiveBack();
                throw;
            }
        }
        catch (RecordException damaged) when (damaged.Fault is Fault.Damaged or Fault.NotADatabase)
        {
            // Nothing can be read out of it, so it is kept as it lies, with its log.
            foreach (var part in Parts.Where(part => File.Exists(record + part))) File.Copy(record + part, kept + part);
        }

        Swap(record, fresh);
        return kept;
    }

    private static readonly string[] Parts = ["", "-wal", "-shm"];

    // A log that is left would be played into the new file and spoil it.
    private static void Swap(string record, string fresh)
    {
        foreach (var log in Parts.Skip(1)) File.Delete(record + log);
        FinishedName.Give(fresh, record);
    }

    private static void Delete(string fresh)
    {
        foreach (var part in Parts) File.Delete(fresh + part);
    }
}

/// <summary>A record that was put back.</summary>
/// <param name="File">The record.</param>
/// <param name="From">The copy it came from.</param>
/// <param name="Migrated">Whether the copy was of an older schema and was brought up to date.</param>
/// <param name="Kept">Where what the record held before is kept; null where it held nothing.</param>
/// <param name="Attachments">What became of the copy's attachments.</param>
public sealed record RestoreResult(string File, string From, bool Migrated, string? Kept, AttachmentsCopied Attachments);
