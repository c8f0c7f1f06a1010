namespace BuildLog.Tui.Tests.Commands;

/// <summary>backup, restore and check-database through the front door; what they do to files is tested where the record is.</summary>
public sealed class SafetyCommandsTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-safety-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string Record => Path.Combine(folder, "shop.db");

    [Fact]
    public void A_backup_of_the_demo_shop_is_a_record_of_its_own()
    {
        var said = Said.By("backup", Record, "--demo", "--json");

        Assert.Equal(Record, said.Json.GetProperty("file").GetString());
        Assert.Equal(new FileInfo(Record).Length, said.Json.GetProperty("bytes").GetInt64());
        Assert.Equal(3, said.Json.GetProperty("attachments").GetProperty("count").GetInt32());
        Assert.All(Said.By("attachments", "Tansy", "--database", Record, "--json").Json.GetProperty("attachments").EnumerateArray(), one => Assert.Equal("sound", one.GetProperty("state").GetString()));
        Assert.StartsWith("Brindle", Said.By("vehicles", "--database", Record).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_backup_is_not_written_over_another_unasked()
    {
        Said.By("backup", Record, "--demo");
        var said = Said.By("backup", Record, "--demo");

        Assert.Equal(3, said.ExitCode);
        Assert.Contains("--overwrite", said.Errors, StringComparison.Ordinal);
        Assert.Equal(0, Said.By("backup", Record, "--demo", "--overwrite").ExitCode);
    }

    [Fact]
    public void A_restore_names_what_it_replaced_and_where_that_is_kept()
    {
        var stick = Path.Combine(folder, "stick.db");
        Said.By("backup", stick, "--demo");
        Said.By("backup", Record, "--demo");
        var restored = Said.By("restore", stick, "--database", Record, "--json").Json;

        Assert.Equal(stick, restored.GetProperty("from").GetString());
        Assert.True(File.Exists(restored.GetProperty("replacedKeptAs").GetString()));
        Assert.False(restored.GetProperty("migrated").GetBoolean());
    }

    [Theory]
    [InlineData("There is no file", 3, "restore", "gone.db", "--database", "shop.db")]
    [InlineData("thrown away at the end", 2, "restore", "gone.db", "--demo")]
    [InlineData("Name the file", 2, "backup", " ", "--demo")]
    [InlineData("There is no record at", 3, "check-database", "--database", "/nowhere/shop.db")]
    public void What_cannot_be_is_one_sentence(string sentence, int exitCode, params string[] arguments)
    {
        var said = Said.By(arguments);

        Assert.Equal(exitCode, said.ExitCode);
        Assert.Contains(sentence, said.Errors, StringComparison.Ordinal);
        Assert.Single(said.Errors.TrimEnd().Split('\n'));
    }

    [Fact]
    public void A_whole_record_is_said_to_be_so()
    {
        Said.By("backup", Record, "--demo");
        var said = Said.By("check-database", "--database", Record, "--json");

        Assert.Equal(0, said.ExitCode);
        Assert.True(said.Json.GetProperty("ok").GetBoolean());
        Assert.Equal(0, said.Json.GetProperty("troubles").GetArrayLength());
    }

    [Fact]
    public void A_damaged_record_ends_with_3()
    {
        Said.By("backup", Record, "--demo");
        using (var file = File.Open(Record, FileMode.Open)) file.SetLength(file.Length / 2);

        Assert.Equal(3, Said.By("check-database", "--database", Record).ExitCode);
    }

    [Fact]
    public void The_first_start_of_a_day_takes_a_backup()
    {
        Said.By("backup", Record, "--demo");
        Said.By("vehicles", "--database", Record);
        Said.By("vehicles", "--database", Record);

        Assert.Single(Directory.GetFiles(Path.Combine(folder, "backups")));
    }

    [Fact]
    public void A_backup_that_fails_is_a_sentence_and_the_command_goes_on()
    {
        Said.By("backup", Record, "--demo");
        File.WriteAllText(Path.Combine(folder, "backups"), "a file where the folder should be");
        var said = Said.By("vehicles", "--database", Record, "--json");

        Assert.Equal(0, said.ExitCode);
        Assert.NotEqual(0, said.Json.GetProperty("vehicles").GetArrayLength());
        Assert.Contains("Today's backup was not made.", said.Errors, StringComparison.Ordinal);
    }
}
