using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using Microsoft.Data.Sqlite;
using Xunit;

namespace BuildLog.Data.Tests.Files;

public sealed class AFileThatCannotBeUsed : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void A_folder_is_refused_and_a_file_in_it_suggested()
        => Refused(test.Folder, Fault.Folder, $"{test.Folder} is a folder. Name the file in it, such as {Path.Combine(test.Folder, "shop.db")}.");

    [Fact]
    public void A_missing_folder_is_named()
        => Refused(
            Path.Combine(test.Folder, "gone", "shop.db"), Fault.NoFolder,
            $"The folder {Path.Combine(test.Folder, "gone")} does not exist. Create it first: mkdir -p \"{Path.Combine(test.Folder, "gone")}\"; or name another file with --database.");

    [Fact]
    public void An_empty_file_is_not_taken_for_a_new_shop()
    {
        var path = Write("empty.db", "");
        Refused(path, Fault.Empty, $"{path} is empty (0 bytes). Restore the newest copy from its backups folder (buildlog restore FILE), or delete it to start a new record.");
        Assert.Equal(0, new FileInfo(path).Length);
    }

    [Fact]
    public void A_text_file_is_refused_and_not_touched()
    {
        var path = Write("letter.db", "Dear shop, this is a letter and no database at all, however long it may be.");
        Refused(path, Fault.NotADatabase, $"{path} is not a BuildLog record (or it is encrypted). It was not touched; name another file with --database.");
        Assert.StartsWith("Dear shop", File.ReadAllText(path), StringComparison.Ordinal);
    }

    [Fact]
    public void A_database_of_another_program_is_refused_and_not_touched()
    {
        var path = Path.Combine(test.Folder, "other.db");
        Run(path, "CREATE TABLE Recipes (Id INTEGER PRIMARY KEY)", create: true);
        var before = File.ReadAllBytes(path);
        Refused(path, Fault.NotOurs, $"{path} is a database of another program. It was not touched; name another file with --database.");
        Assert.Equal(before, File.ReadAllBytes(path));
    }

    [Fact]
    public void A_newer_schema_is_refused_and_not_touched()
    {
        Close();
        Run(test.Path, "INSERT INTO __EFMigrationsHistory VALUES ('99991231000000_FromTheFuture', '99.0')");
        Refused(test.Path, Fault.Newer, $"{test.Path} was written by a newer BuildLog. It was not touched; install the newer program to open it.");
        Assert.False(Directory.Exists(Path.Combine(test.Folder, "backups")));
    }

    [Fact]
    public void A_damaged_file_says_so_when_it_is_read()
    {
        Close();
        Damage.LastPagesOf(test.Path);
        var refused = Assert.Throws<RecordException>(() =>
        {
            using var shop = ShopFile.Open(test.Path);
            return shop.Vehicles();
        });
        Assert.Equal(Fault.Damaged, refused.Fault);
        Assert.Contains("backups folder", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_where_nothing_can_be_made_is_a_sentence()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Needs a folder that nobody can write to.");
        var refused = Assert.Throws<RecordException>(() => ShopFile.Open("/proc/shop.db"));
        Assert.Equal("/proc/shop.db cannot be opened: its folder is missing, or you may not read it or create files there. Name another file with --database.", refused.Message);
    }

    [Fact]
    public void A_folder_without_the_right_to_write_is_a_sentence()
    {
        if (OperatingSystem.IsWindows() || Environment.UserName == "root")
        {
            Assert.Skip("Rights do not bind this user.");
            return;
        }

        var folder = Directory.CreateDirectory(Path.Combine(test.Folder, "locked"), UnixFileMode.UserRead | UnixFileMode.UserExecute).FullName;
        var refused = Assert.Throws<RecordException>(() => ShopFile.Open(Path.Combine(folder, "shop.db")));
        Assert.Equal(Fault.NotWritable, refused.Fault);
    }

    [Fact]
    public void That_nothing_can_be_stored_is_known_before_anybody_tries()
    {
        if (OperatingSystem.IsWindows() || Environment.UserName == "root")
        {
            Assert.Skip("Rights do not bind this user.");
            return;
        }

        Assert.Null(test.Shop.NotWritable);
        test.Shop.Dispose();
        File.SetUnixFileMode(test.Path, UnixFileMode.UserRead);
        using var looking = ShopFile.Open(test.Path);
        Assert.StartsWith($"{test.Path} or its folder cannot be written", looking.NotWritable, StringComparison.Ordinal);
    }

    // A connection opened meanwhile reads only; kept for the next change, it would refuse that too.
    [Fact]
    public void A_file_that_may_be_written_again_is_written_without_a_new_start()
    {
        if (OperatingSystem.IsWindows() || Environment.UserName == "root")
        {
            Assert.Skip("Rights do not bind this user.");
            return;
        }

        File.SetUnixFileMode(test.Path, UnixFileMode.UserRead);
        Assert.Equal(Fault.NotWritable, Assert.Throws<RecordException>(() => test.Shop.Add(new Vehicle { Name = "Brindle" })).Fault);

        foreach (var file in new[] { test.Path, test.Path + "-wal" }) File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite); // SQLite gives its log the rights of the file
        test.Shop.Add(new Vehicle { Name = "Brindle" });
        Assert.Single(test.Shop.Vehicles());
    }

    [Fact]
    public void Another_writer_is_waited_for_and_then_named()
    {
        using var other = new SqliteConnection($"Data Source={test.Path};Pooling=False");
        other.Open();
        using var held = other.BeginTransaction();
        var refused = Assert.Throws<RecordException>(() => test.Shop.Add(new Vehicle { Name = "Brindle" }));
        Assert.Equal(Fault.Busy, refused.Fault);
        Assert.Equal($"Another program is writing to {test.Path}. Nothing was changed; wait a moment or close it, and try again.", refused.Message);

        held.Rollback();
        test.Shop.Add(new Vehicle { Name = "Brindle" });
        Assert.Single(test.Shop.Vehicles());
    }

    private static void Refused(string path, Fault fault, string sentence)
    {
        var refused = Assert.Throws<RecordException>(() => ShopFile.Open(path));
        Assert.Equal(sentence, refused.Message);
        Assert.Equal(fault, refused.Fault);
    }

    private void Close() => test.Shop.Dispose();

    private string Write(string name, string text)
    {
        var path = Path.Combine(test.Folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    private static void Run(string path, string sql, bool create = false)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False;Mode={(create ? "ReadWriteCreate" : "ReadWrite")}");
        connection.Open();
        connection.Run(sql);
    }
}
