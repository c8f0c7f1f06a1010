namespace BuildLog.Data.Files;

/// <summary>Looks at the file before it is used: it costs a millisecond and loads no object mapper.</summary>
internal static class OpeningCheck
{
    /// <summary>"BLog": written into the file's header, so that another program's database is known for what it is.</summary>
    public const int ApplicationId = 0x424C6F67;

    internal enum State
    {
        Missing,
        Older,

        /// <summary>Of today's schema, but not in write-ahead mode: a copy that was made to lie still, or a file that was not finished.</summary>
        Copy,
        Current,
    }

    /// <returns>A connection to the record as it is then, for reading.</returns>
    public static PlainConnection Prepare(string path, bool isDefault)
    {
        if (Directory.Exists(path))
            throw new RecordException(Fault.Folder, Spoken($"{path} is a folder. Name the file in it, such as {Path.Combine(path, "shop.db")}."));

        CheckFolder(path, isDefault);
        if (Look(path, out var connection) == State.Current) return connection!;

        connection?.Dispose();
        using var alone = MigrationLock.Take(path);

        // Another program may have done the work while we waited.
        switch (Look(path))
        {
            case State.Missing:
                Migrating.Create(path);
                break;
            case State.Older:
                Migrating.BringUpToDate(path);
                break;
            case State.Copy:
                Migrating.Finish(path);
                break;
        }

        return PlainConnection.OpenForLooking(path);
    }

    internal static void CheckFolder(string path, bool isDefault)
    {
        var folder = Path.GetDirectoryName(path)!;
        if (Directory.Exists(folder)) return;

        if (!isDefault)
            throw new RecordException(Fault.NoFolder, Spoken($"The folder {folder} does not exist. Create it first: {NewFolder.Command(folder)}; or name another file with --database."));
        OwnerOnly.CreateFolder(folder);
    }

    internal static State Look(string path)
    {
        var state = Look(path, out var connection);
        connection?.Dispose();
        return state;
    }

    private static State Look(string path, out PlainConnection? connection)
    {
        connection = null;
        var file = new FileInfo(path);
        if (!file.Exists) return State.Missing;
        if (file.Length == 0)
            throw new RecordException(Fault.Empty, Spoken($"{path} is empty (0 bytes). Restore the newest copy from its backups folder (buildlog restore FILE), or delete it to start a new record."));

        connection = PlainConnection.OpenForLooking(path);
        try
        {
            return Look(connection, path);
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    private static State Look(PlainConnection connection, string path)
    {
        if (!IsOurs(connection))
            throw new RecordException(Fault.NotOurs, Spoken($"{path} is a database of another program. It was not touched; name another file with --database."));

        var done = Done(connection);
        if (done.Except(KnownMigrations.Ids).Any())
            throw new RecordException(Fault.Newer, Spoken($"{path} was written by a newer BuildLog. It was not touched; install the newer program to open it."));
        return KnownMigrations.Ids.Except(done).Any() ? State.Older
            : connection.Ask("PRAGMA journal_mode") is "wal" ? State.Current
            : State.Copy;
    }

    /// <summary>Whether it is a record and no other program's database.</summary>
    /// <exception cref="RecordException">It is no database at all.</exception>
    internal static bool IsOurs(string path) => FileTroubles.Guard(path, () =>
    {
        using var connection = PlainConnection.OpenForLooking(path);
        return IsOurs(connection);
    });

    private static bool IsOurs(PlainConnection connection) => connection.Ask("PRAGMA application_id") is (long)ApplicationId;

    private static IReadOnlyList<string> Done(PlainConnection connection)
        => connection.Ask("SELECT 1 FROM sqlite_master WHERE name = '__EFMigrationsHistory'") is null
            ? []
            : connection.Column("SELECT \"MigrationId\" FROM \"__EFMigrationsHistory\"");
}
