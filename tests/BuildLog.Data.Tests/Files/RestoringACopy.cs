using System.Text;
using BuildLog.Data.Attachments;
using BuildLog.Data.Files;
using Microsoft.Data.Sqlite;
using Xunit;

namespace BuildLog.Data.Tests.Files;

public sealed class RestoringACopy : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    private string Stick => Path.Combine(test.Folder, "stick.db");

    [Fact]
    public void Brings_back_what_it_holds_and_keeps_what_it_replaces()
    {
        MakeCopy("Brindle");
        test.Vehicle("Tansy");
        test.Shop.Dispose();

        var result = Restore.From(Stick, test.Path);
        Assert.Equal(["Brindle"], Names(test.Path));
        Assert.False(result.Migrated);
        Assert.StartsWith(Path.Combine(test.Folder, "backups", "shop.before-restore."), result.Kept, StringComparison.Ordinal);
        Assert.Equal(["Brindle", "Tansy"], Names(result.Kept!));
        Assert.Equal(["Brindle"], Names(Stick));
        AssertNothingLeftOver();
    }

    [Fact]
    public void Makes_the_record_where_there_was_none()
    {
        MakeCopy("Brindle");
        var another = Path.Combine(test.Folder, "another.db");
        Assert.Null(Restore.From(Stick, another).Kept);
        Assert.Equal(["Brindle"], Names(another));
    }

    [Fact]
    public void Brings_an_older_one_up_to_date_and_leaves_the_copy_as_it_is()
    {
        EarlierRecord.Make("FirstRecord.sql", Stick);
        var before = File.ReadAllBytes(Stick);
        test.Shop.Dispose();
        Assert.True(Restore.From(Stick, test.Path).Migrated);
        Assert.Equal(["Brindle", "Haldor", "Ottery", "Pellow", "Quillon", "Tansy"], Names(test.Path));
        Assert.Equal(before, File.ReadAllBytes(Stick));
    }

    [Fact]
    public void Brings_its_attachments_back()
    {
        var photo = Put("photo");
        MakeCopy("Brindle");
        Directory.Delete(Path.Combine(test.Folder, "shop.files"), recursive: true);
        test.Shop.Dispose();
        Assert.Equal(1, Restore.From(Stick, test.Path).Attachments.Copied);
        Assert.True(AttachmentStore.Beside(test.Path).Check([photo]).IsSound);
    }

    [Fact]
    public void Makes_the_guards_of_the_file_anew()
    {
        MakeCopy("Brindle");
        using (var copy = ShopConnection.OpenAlone(Stick)) copy.Run("DROP TRIGGER Fitments_Insert_NoOverlap");
        test.Shop.Dispose();
        Restore.From(Stick, test.Path);
        Assert.True(RecordCheck.Of(test.Path).IsSound);
    }

    [Fact]
    public void Waits_until_nobody_has_the_record_open()
    {
        MakeCopy("Brindle");
        test.Vehicle("Tansy");
        var refused = Assert.Throws<RecordException>(() => Restore.From(Stick, test.Path));
        Assert.Equal((Fault.Busy, $"Another program has {test.Path} open. Close it and try again; nothing was changed."), (refused.Fault, refused.Message));
        Assert.Equal(["Brindle", "Tansy"], test.Shop.Vehicles().Select(vehicle => vehicle.Name));
        Assert.Equal("wal", test.Ask("PRAGMA journal_mode"));
        AssertNothingLeftOver();
    }

    [Fact]
    public void Puts_a_damaged_record_aside_as_it_lies()
    {
        MakeCopy("Brindle");
        test.Shop.Dispose();
        Damage.LastPagesOf(test.Path);
        var damaged = File.ReadAllBytes(test.Path);

        var result = Restore.From(Stick, test.Path);
        Assert.Equal(damaged, File.ReadAllBytes(result.Kept!));
        Assert.Equal(["Brindle"], Names(test.Path));
    }

    [Fact]
    public void Takes_the_place_of_an_empty_file()
    {
        MakeCopy("Brindle");
        test.Shop.Dispose();
        File.WriteAllText(test.Path, "");
        Assert.Null(Restore.From(Stick, test.Path).Kept);
        Assert.Equal(["Brindle"], Names(test.Path));
    }

    [Fact]
    public void Does_not_play_the_log_of_the_old_record_into_the_new_one()
    {
        MakeCopy("Brindle");
        test.Shop.Dispose();
        Damage.LastPagesOf(test.Path);
        File.WriteAllBytes(test.Path + "-wal", new byte[8192]);
        Restore.From(Stick, test.Path);
        Assert.Equal(["Brindle"], Names(test.Path));
    }

    [Fact]
    public void Never_replaces_the_database_of_another_program()
    {
        MakeCopy("Brindle");
        var other = Path.Combine(test.Folder, "other.db");
        using (var connection = new SqliteConnection($"Data Source={other};Pooling=False"))
        {
            connection.Open();
            connection.Run("CREATE TABLE Recipes (Id INTEGER PRIMARY KEY)");
        }

        var before = File.ReadAllBytes(other);
        Refused(Stick, other, Fault.NotOurs, $"{other} is a database of another program. It was not touched; name another file with --database.");
        Assert.Equal(before, File.ReadAllBytes(other));
    }

    [Fact]
    public void Refuses_what_is_no_copy_and_changes_nothing()
    {
        test.Vehicle("Brindle");
        test.Shop.Dispose();
        var letter = Path.Combine(test.Folder, "letter.txt");
        File.WriteAllText(letter, "Dear shop, this is a letter and no database at all, however long it may be.");
        Refused(letter, test.Path, Fault.NotADatabase, $"{letter} is no copy of a BuildLog record. Nothing was changed; name another file.");

        File.WriteAllText(letter, "");
        Refused(letter, test.Path, Fault.Empty, $"{letter} is no copy of a BuildLog record. Nothing was changed; name another file.");
        Refused(test.Path, test.Path, Fault.Exists, $"{test.Path} is the record itself. Name the copy to restore.");
        Refused(Stick, test.Path, Fault.NoRecord, $"There is no file {Stick}. Copies lie in the folder backups beside the record.");
        Refused(test.Folder, test.Path, Fault.Folder, $"{test.Folder} is a folder. Name the file in it, such as {Path.Combine(test.Folder, "shop.2026-05-03.db")}.");
        Assert.Equal(["Brindle"], Names(test.Path));
    }

    [Fact]
    public void Refuses_a_damaged_copy_and_one_from_the_future()
    {
        MakeCopy("Brindle");
        test.Shop.Dispose();
        using (var copy = ShopConnection.OpenAlone(Stick)) copy.Run("INSERT INTO __EFMigrationsHistory VALUES ('99991231000000_FromTheFuture', '99.0')");
        Refused(Stick, test.Path, Fault.Newer, $"{Stick} was written by a newer BuildLog. It was not touched; install the newer program to open it.");

        Damage.LastPagesOf(Stick);
        Refused(Stick, test.Path, Fault.Damaged, $"{Stick} is damaged. Nothing was changed; take an older copy.");
        Assert.False(Directory.Exists(Path.Combine(test.Folder, "backups")));
        AssertNothingLeftOver();
    }

    private static void Refused(string source, string record, Fault fault, string sentence)
    {
        var refused = Assert.Throws<RecordException>(() => Restore.From(source, record));
        Assert.Equal((fault, sentence), (refused.Fault, refused.Message));
    }

    private void MakeCopy(string vehicle)
    {
        test.Vehicle(vehicle);
        Backup.To(test.Path, Stick, overwrite: false);
    }

    private string Put(string content)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(content));
        return AttachmentStore.Beside(test.Path).Put(stream).Sha256;
    }

    private void AssertNothingLeftOver() => Assert.Empty(Directory.GetFiles(test.Folder, "*.tmp*", SearchOption.AllDirectories));

    private static List<string> Names(string path)
    {
        using var shop = ShopFile.Open(path);
        return [.. shop.Vehicles().Select(vehicle => vehicle.Name)];
    }
}
