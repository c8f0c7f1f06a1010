using System.Text;
using BuildLog.Data.Attachments;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Attachments;

public sealed class FilesBesideTheRecord : IDisposable
{
    // FIPS 180-4, the message "abc": csrc.nist.gov, example values of SHA-256.
    private const string HashOfAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;
    private readonly AttachmentStore store;

    public FilesBesideTheRecord() => store = AttachmentStore.Beside(Path.Combine(folder, "shop.db"));

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Lie_under_the_hash_of_their_content()
    {
        Assert.Equal(new StoredFile(HashOfAbc, 3), Put("abc"));
        Assert.Equal("abc", File.ReadAllText(Place));
    }

    [Fact]
    public void Are_read_back_as_they_were_put_in()
    {
        Put("abc");
        using var file = store.Open(HashOfAbc);
        Assert.True(file.IsSound);
        using var reader = new StreamReader(file.Content);
        Assert.Equal("abc", reader.ReadToEnd());
    }

    [Fact]
    public void Are_kept_once_however_often_they_are_put_in()
    {
        Put("abc");
        var written = File.GetLastWriteTimeUtc(Place);
        Assert.Equal(new StoredFile(HashOfAbc, 3), Put("abc"));
        Assert.Equal(written, File.GetLastWriteTimeUtc(Place));
        Assert.Equal([Place], Directory.GetFiles(store.Folder, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void Can_be_read_by_their_owner_only()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("The user's data folder guards them there.");
            return;
        }

        Put("abc");
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Place));
        foreach (var path in (string[])[store.Folder, Path.GetDirectoryName(Place)!])
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(path));
    }

    [Theory]
    [InlineData("abd")]
    [InlineData("")]
    [InlineData("abcabc")]
    public void Are_told_apart_when_somebody_altered_them(string content)
    {
        Put("abc");
        File.WriteAllText(Place, content);
        using var file = store.Open(HashOfAbc);
        Assert.Equal(FileState.Altered, file.State);
        Assert.Null(file.Content);
        Assert.Equal(Place, file.Path);
    }

    [Fact]
    public void Are_made_good_when_the_same_content_is_put_in_again()
    {
        Put("abc");
        File.WriteAllText(Place, "spoilt");
        Put("abc");
        Assert.Equal("abc", File.ReadAllText(Place));
    }

    [Theory]
    [InlineData(HashOfAbc)]
    [InlineData("../../etc/passwd")]
    [InlineData("")]
    public void Are_missing_when_they_are_not_there_or_the_name_is_none(string name)
    {
        using var file = store.Open(name);
        Assert.Equal(FileState.Missing, file.State);
    }

    [Fact]
    public void Are_compared_with_what_the_record_names()
    {
        var (kept, gone, spoilt, unnamed) = (Put("kept").Sha256, Put("gone").Sha256, Put("spoilt").Sha256, Put("unnamed").Sha256);
        File.Delete(PlaceOf(gone));
        File.AppendAllText(PlaceOf(spoilt), "!");

        var found = store.Check([kept, gone, spoilt, kept]);
        Assert.Equal(3, found.Named);
        Assert.Equal([gone], found.Missing);
        Assert.Equal([spoilt], found.Altered);
        Assert.Equal([unnamed], found.Unnamed);
        Assert.False(found.IsSound);
        Assert.True(store.Check([kept]).IsSound);
    }

    [Fact]
    public void Cannot_be_empty()
        => Assert.Equal("The file is empty (0 bytes), so there is nothing to keep. Choose another.", Assert.Throws<RefusedException>(() => Put("")).Refusal.Message);

    [Fact]
    public void Cannot_be_larger_than_a_long_scan_and_leave_nothing_behind()
    {
        using var film = new Zeros(AttachmentStore.LargestBytes + 1);
        var refused = Assert.Throws<RefusedException>(() => store.Put(film));
        Assert.StartsWith("The file is larger than 100 MB", refused.Refusal.Message, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(store.Folder));
    }

    [Theory]
    [InlineData("shop.db", "shop.files")]
    [InlineData("shop", "shop.files")]
    [InlineData("shop.2026.db", "shop.2026.files")]
    [InlineData("shop.files", "shop.files.files")]
    public void Have_a_folder_of_the_records_name(string record, string expected)
        => Assert.Equal(Path.Combine(folder, expected), AttachmentStore.Beside(Path.Combine(folder, record)).Folder);

    [Fact]
    public void Are_not_made_up_by_asking()
    {
        Assert.True(store.Check([]).IsSound);
        Assert.False(Directory.Exists(store.Folder));
    }

    private string Place => PlaceOf(HashOfAbc);

    private string PlaceOf(string sha256) => Path.Combine(folder, "shop.files", sha256[..2], sha256);

    private StoredFile Put(string content)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(content));
        return store.Put(stream);
    }

    /// <summary>As long as wanted without taking the room.</summary>
    private sealed class Zeros(long length) : Stream
    {
        private long left = length;

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => throw new NotSupportedException();
            set => throw new NotSupportedException();
        }

        public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

        public override int Read(Span<byte> buffer)
        {
            var count = (int)Math.Min(left, buffer.Length);
            buffer[..count].Clear();
            left -= count;
            return count;
        }

        public override void Flush() { }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
