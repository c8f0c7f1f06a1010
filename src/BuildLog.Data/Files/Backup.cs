using System.Globalization;

namespace BuildLog.Data.Files;

/// <summary>Copies of the record, in a folder beside it.</summary>
internal static class Backup
{
    /// <summary>A checked copy of the whole record as it was before a change of schema.</summary>
    public static string BeforeMigration(string path)
    {
        var folder = Path.Combine(Path.GetDirectoryName(path)!, "backups");
        OwnerOnly.CreateFolder(folder);
        var stamp = DateTime.UtcNow.ToString("yyyyMMdd'T'HHmmssfff'Z'", CultureInfo.InvariantCulture);
        var copy = Path.Combine(folder, $"{Path.GetFileNameWithoutExtension(path)}.before-migration.{stamp}.db");
        var unfinished = copy + ".tmp";
        OwnerOnly.OpenFile(unfinished).Dispose();

        using (var connection = ShopConnection.OpenAlone(path))
        {
            using var command = connection.CreateCommand();
            command.CommandTimeout = 0;
            command.CommandText = "VACUUM INTO $copy";
            command.Parameters.AddWithValue("$copy", unfinished);
            command.ExecuteNonQuery();
        }

        using (var connection = ShopConnection.OpenAlone(unfinished, readOnly: true))
        {
            if (connection.Ask("PRAGMA quick_check") is not "ok")
                throw new RecordException(Fault.Damaged, $"{path} is damaged: its backup does not check. It was not migrated; put the newest copy from {folder} in its place.");
        }

        using (var file = OwnerOnly.OpenFile(unfinished)) file.Flush(flushToDisk: true);
        File.Move(unfinished, copy);
        return copy;
    }
}
