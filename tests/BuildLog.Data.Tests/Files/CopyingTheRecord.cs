using System.Text;
using BuildLog.Data.Attachments;
using BuildLog.Data.Files;
using Xunit;

namespace BuildLog.Data.Tests.Files;

public sealed class CopyingTheRecord : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    private string Stick => Path.Combine(test.Folder, "stick.db");

    [Fact]
    public void Gives_a_record_that_opens_like_any_other()
    {
        test.Vehicle("Brindle");
        var result = Backup.To(test.Path, Stick, overwrite: false);
        Assert.Equal((Stick, new FileInfo(Stick).Length), (result.File, result.Bytes));
        using var shop = ShopFile.Open(Stick);
        Assert.Equal("Brindle", Assert.Single(shop.Vehicles()).Name);

        using var connection = ShopConnection.OpenAlone(Stick);
        Assert.Equal("wal", connection.Ask("PRAGMA journal_mode"));
    }

    [Fact]
    public void Takes_the_attachments_along()
    {
        var photo = Put("photo");
        var result = Backup.To(test.Path, Stick, overwrite: false);
        Assert.Equal((1, 1), (result.Attachments.Count, result.Attachments.Copied));
        Assert.Equal("photo", File.ReadAllText(Path.Combine(test.Folder, "stick.files", photo[..2], photo)));

        Put("receipt");
        var second = Backup.To(test.Path, Stick, overwrite: true).Attachments;
        Assert.Equal((2, 1), (second.Count, second.Copied));
    }

    [Fact]
    public void Leaves_out_an_attachment_that_is_spoilt_and_says_which()
    {
        var photo = Put("photo");
        File.WriteAllText(Path.Combine(test.Folder, "shop.files", photo[..2], photo), "spoilt");
        Assert.Equal([photo], Backup.To(test.Path, Stick, overwrite: false).Attachments.Altered);
        Assert.True(AttachmentStore.Beside(Stick).Check([photo]).Missing.Count == 1);
    }

    [Fact]
    public void Does_not_go_over_an_earlier_copy_unasked()
    {
        test.Vehicle("Brindle");
        Backup.To(test.Path, Stick, overwrite: false);
        test.Vehicle("Tansy");
        Refused(Stick, overwrite: false, Fault.Exists, $"{Stick} is there already. Name another file, or replace it with --overwrite.");
        Assert.Equal(1L, Ask(Stick));
        Backup.To(test.Path, Stick, overwrite: true);
        Assert.Equal(2L, Ask(Stick));
    }

    [Theory]
    [InlineData("Dear shop, this is a letter and no database at all, however long it may be.")]
    [InlineData("")]
    public void Never_goes_over_something_else(string content)
    {
        var letter = Path.Combine(test.Folder, "letter.txt");
        File.WriteAllText(letter, content);
        Refused(letter, overwrite: true, Fault.NotOurs, $"{letter} is no record of BuildLog, so it was not replaced. Name another file.");
        Assert.Equal(content, File.ReadAllText(letter));
    }

    [Fact]
    public void Never_goes_over_the_record_itself_by_whatever_name()
    {
        test.Vehicle("Brindle");
        Refused(test.Path, overwrite: true, Fault.Exists, $"{test.Path} is the record itself. Name another file, such as shop-backup.db.");

        var byway = Path.Combine(test.Folder, "byway");
        Directory.CreateSymbolicLink(byway, test.Folder);
        var same = Path.Combine(byway, "shop.db");
        Refused(same, overwrite: true, Fault.Busy, $"Another program has {same} open. Close it and try again; nothing was changed.");
        Assert.Single(test.Shop.Vehicles());
    }

    [Fact]
    public void Never_goes_over_a_record_that_is_open()
    {
        Backup.To(test.Path, Stick, overwrite: false);
        using var shop = ShopFile.Open(Stick);
        Refused(Stick, overwrite: true, Fault.Busy, $"Another program has {Stick} open. Close it and try again; nothing was changed.");
    }

    [Fact]
    public void Needs_a_folder_to_go_to()
    {
        Refused(test.Folder, overwrite: false, Fault.Folder, $"{test.Folder} is a folder. Name the file in it, such as {Path.Combine(test.Folder, "shop-backup.db")}.");
        var gone = Path.Combine(test.Folder, "gone");
        Refused(Path.Combine(gone, "x.db"), overwrite: false, Fault.NoFolder, $"The folder {gone} does not exist. Create it first: {NewFolder.Command(gone)}; or name another place.");
    }

    [Fact]
    public void Needs_a_record_to_copy()
    {
        var gone = Path.Combine(test.Folder, "gone.db");
        var refused = Assert.Throws<RecordException>(() => Backup.To(gone, Stick, overwrite: false));
        Assert.Equal((Fault.NoRecord, $"There is no record at {gone} to copy. Name another file with --database."), (refused.Fault, refused.Message));
        Assert.False(File.Exists(gone));
    }

    private void Refused(string target, bool overwrite, Fault fault, string sentence)
    {
        var refused = Assert.Throws<RecordException>(() => Backup.To(test.Path, target, overwrite));
        Assert.Equal((fault, sentence), (refused.Fault, refused.Message));
    }

    private string Put(string content)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(content));
        return AttachmentStore.Beside(test.Path).Put(stream).Sha256;
    }

    private static object? Ask(string path)
    {
        using var connection = ShopConnection.OpenAlone(path, readOnly: true);
        return connection.Ask("SELECT count(*) FROM Vehicles");
    }
}
