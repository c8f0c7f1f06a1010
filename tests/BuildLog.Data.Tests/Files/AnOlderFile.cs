using BuildLog.Data.Files;
using Microsoft.Data.Sqlite;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>An older file is made from today's by taking its tables and its history away; the mark of a BuildLog record stays.</summary>
public sealed class AnOlderFile : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Is_brought_up_to_date_after_a_backup()
    {
        MakeOlder();
        using var shop = ShopFile.Open(test.Path);
        Assert.Empty(shop.Vehicles());

        var backup = Assert.Single(Directory.GetFiles(Path.Combine(test.Folder, "backups")));
        Assert.StartsWith("shop.before-migration.", Path.GetFileName(backup), StringComparison.Ordinal);
        using var copy = ShopConnection.OpenAlone(backup, readOnly: true);
        Assert.Equal("kept", copy.Ask("SELECT Word FROM OldNotes"));
        if (!OperatingSystem.IsWindows()) Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(backup));
    }

    [Fact]
    public void Is_not_held_up_by_the_lock_of_a_killed_migration()
    {
        MakeOlder("INSERT INTO __EFMigrationsLock VALUES (1, '2020-01-01')");
        using var shop = ShopFile.Open(test.Path);
        Assert.Empty(shop.Vehicles());
    }

    [Fact]
    public void Is_backed_up_only_when_there_is_something_to_do()
    {
        test.Reopen();
        Assert.False(Directory.Exists(Path.Combine(test.Folder, "backups")));
    }

    private void MakeOlder(string also = "")
    {
        test.Shop.Dispose();
        using var connection = new SqliteConnection($"Data Source={test.Path};Pooling=False;Foreign Keys=False");
        connection.Open();
        foreach (var table in (string[])["FindableText", "Findables", "Changes", "ChangeSets", "Fitments", "Specs", "ShaftPieces", "Readings", "Gears", "Goals", "Sessions", "Components", "Vehicles", "__EFMigrationsHistory"])
            connection.Run($"DROP TABLE \"{table}\"");
        connection.Run("CREATE TABLE OldNotes (Word TEXT NOT NULL); INSERT INTO OldNotes VALUES ('kept');" + also);
    }
}
