using Microsoft.Data.Sqlite;

namespace BuildLog.Data.Files;

/// <summary>Looks at the file before it is used: it costs a millisecond and loads no object mapper.</summary>
internal static class OpeningCheck
{
    /// <summary>"BLog": written into the file's header, so that another program's database is known for what it is.</summary>
    public const int ApplicationId = 0x424C6F67;

    private enum State
    {
        Missing,
        Older,
        Current,
    }

    public static void Prepare(string path, bool isDefault)
    {
        if (Directory.Exists(path))
            throw new RecordException(Fault.Folder, $"{path} is a folder. Name the file in it, such as {Path.Combine(path, "shop.db")}.");

        CheckFolder(path, isDefault);
        if (Look(path) == State.Current) return;

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
        }
    }

    private static void CheckFolder(string path, bool isDefault)
    {
        var folder = Path.GetDirectoryName(path)!;
        if (Directory.Exists(folder)) return;

        if (!isDefault)
            throw new RecordException(Fault.NoFolder, $"The folder {folder} does not exist. Create it first, or name another file with --database.");
        OwnerOnly.CreateFolder(folder);
    }

    private static State Look(string path)
    {
        var file = new FileInfo(path);
        if (!file.Exists) return State.Missing;
        if (file.Length == 0)
            throw new RecordException(Fault.Empty, $"{path} is empty (0 bytes). Put a copy from its backups folder in its place, or delete it to start a new record.");

        using var connection = ShopConnection.OpenAlone(path);
        if (connection.Ask("PRAGMA application_id") is not (long)ApplicationId)
            throw new RecordException(Fault.NotOurs, $"{path} is a database of another program. It was not touched; name another file with --database.");

        var done = Done(connection);
        if (done.Except(KnownMigrations.Ids).Any())
            throw new RecordException(Fault.Newer, $"{path} was written by a newer BuildLog. It was not touched; install the newer program to open it.");
        return KnownMigrations.Ids.Except(done).Any() ? State.Older : State.Current;
    }

    private static List<string> Done(SqliteConnection connection)
    {
        if (connection.Ask("SELECT 1 FROM sqlite_master WHERE name = '__EFMigrationsHistory'") is null) return [];

        using var command = connection.CreateCommand();
        command.CommandText = "SELECT \"MigrationId\" FROM \"__EFMigrationsHistory\"";
        using var row = command.ExecuteReader();
        var done = new List<string>();
        while (row.Read()) done.Add(row.GetString(0));
        return done;
    }
}
