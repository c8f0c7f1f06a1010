using BuildLog.Data.Attachments;
using Microsoft.Data.Sqlite;

namespace BuildLog.Data.Files;

/// <summary>Examines a record or a copy of one, as it lies: nothing is created, migrated or mended.</summary>
public static class RecordCheck
{
    /// <exception cref="RecordException">It is no record, or none that this program understands.</exception>
    public static RecordHealth Of(string path)
    {
        var full = Path.GetFullPath(path);
        if (!File.Exists(full) && !Directory.Exists(full)) throw new RecordException(Fault.NoRecord, Spoken($"There is no record at {full}. Name another file with --database."));
        if (Directory.Exists(full)) throw new RecordException(Fault.Folder, Spoken($"{full} is a folder. Name the file in it, such as {Path.Combine(full, "shop.db")}."));

        return FileTroubles.Guard(full, () =>
        {
            var isCurrent = OpeningCheck.Look(full) != OpeningCheck.State.Older;
            using var connection = ShopConnection.OpenForReading(full);

            // All questions are answered from one state of the file.
            using var reading = connection.BeginTransaction(deferred: true);
            var files = NamedFiles(connection);
            var integrity = connection.Column("PRAGMA integrity_check").Where(line => line != "ok").ToList();
            return new RecordHealth(
                full,
                isCurrent,
                integrity,
                connection.Column("""SELECT "table" || ' ' || coalesce(rowid, '?') || ' refers to ' || parent FROM pragma_foreign_key_check"""),
                isCurrent ? MissingTriggers(connection) : [],
                connection.Column("SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND NOT strict AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' AND name NOT LIKE '\\_\\_EF%' ESCAPE '\\'"),
                AttachmentStore.Beside(full).Check(files.Keys))
            {
                FileNames = files,
            };
        });
    }

    /// <summary>Whether the file breaks SQLite's rules or those of its own tables.</summary>
    internal static bool FindsDamage(string path)
    {
        try
        {
            using var connection = ShopConnection.OpenForReading(path);
            return connection.Ask("PRAGMA integrity_check") is not "ok" || connection.Ask("PRAGMA foreign_key_check") is not null;
        }
        catch (SqliteException)
        {
            return true;
        }
    }

    private static List<string> MissingTriggers(SqliteConnection connection)
        => [.. Triggers.Names.Except(connection.Column("SELECT name FROM sqlite_master WHERE type = 'trigger'"))];

    // Earlier schemas had no attachments.
    private static Dictionary<string, string> NamedFiles(SqliteConnection connection)
    {
        if (connection.Ask("SELECT 1 FROM pragma_table_info('Attachments') WHERE name = 'Sha256'") is null) return [];
        var named = connection.Column("SELECT \"Sha256\" || group_concat(DISTINCT \"FileName\") FROM \"Attachments\" GROUP BY \"Sha256\"");
        return named.ToDictionary(file => file[..ContentHash.Length], file => file[ContentHash.Length..]);
    }
}
