using BuildLog.Sheet.Tests.Samples;

namespace BuildLog.Sheet.Tests.Files;

public sealed class WriteToAPathTests : IDisposable
{
    private const int NoSpaceLeft = 28;                    // ENOSPC, errno.h

    private readonly string folder = Directory.CreateTempSubdirectory("build-sheet-").FullName;

    private string Target => Path.Combine(folder, "kestrel.pdf");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_new_file_is_written_whole_and_alone()
    {
        var result = BuildSheetWriter.WriteFile(KestrelPickup.Sheet, Target);

        using var stream = new MemoryStream();
        BuildSheetWriter.Write(KestrelPickup.Sheet, stream);
        Assert.Equal(stream.ToArray(), File.ReadAllBytes(Target));
        Assert.Equal(3, result.Pages);
        Assert.Equal([Target], Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void A_file_that_is_there_is_refused_and_stays_as_it_is()
    {
        File.WriteAllText(Target, "last year's sheet");

        var refusal = Refused(Target);

        Assert.Equal($"{Target} is already there; give another name or allow it to be overwritten.", refusal);
        Assert.Equal("last year's sheet", File.ReadAllText(Target));
        Assert.Equal([Target], Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void A_file_that_may_be_overwritten_is()
    {
        File.WriteAllText(Target, "last year's sheet");

        BuildSheetWriter.WriteFile(KestrelPickup.Sheet, Target, overwrite: true);

        Assert.StartsWith("%PDF-1.7", File.ReadAllText(Target), StringComparison.Ordinal);
        Assert.Equal([Target], Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void A_link_is_followed_to_the_file_behind_it()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Making a link needs a privilege there.");
        var link = Path.Combine(folder, "link.pdf");
        File.WriteAllText(Target, "last year's sheet");
        File.CreateSymbolicLink(link, Target);

        BuildSheetWriter.WriteFile(KestrelPickup.Sheet, link, overwrite: true);

        Assert.Equal(Target, new FileInfo(link).LinkTarget);
        Assert.StartsWith("%PDF-1.7", File.ReadAllText(Target), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_folder_is_refused_whether_or_not_overwriting_is_allowed(bool overwrite)
    {
        var refusal = Refused(folder, overwrite);

        Assert.StartsWith($"{folder} is a folder; give a file name in it, such as ", refusal, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void A_folder_that_does_not_exist_is_not_made()
    {
        var missing = Path.Combine(folder, "papers");

        var refusal = Refused(Path.Combine(missing, "kestrel.pdf"));

        Assert.Equal($"There is no folder {missing} to write kestrel.pdf into; make it first or choose another.", refusal);
        Assert.False(Directory.Exists(missing));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("ke\0strel.pdf")]
    public void A_path_that_names_nothing_is_refused(string path)
    {
        Assert.StartsWith("No file name was given", Refused(path), StringComparison.Ordinal);
    }

    [Fact]
    public void A_disk_that_fills_up_half_way_leaves_nothing_and_is_told()
    {
        var refusal = FailingWith(new IOException("No space left on device", NoSpaceLeft));

        Assert.Equal($"The disk is full, so {Target} was not written; free some space or choose another disk.", refusal);
        Assert.Empty(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void A_folder_that_may_not_be_written_is_told()
    {
        var refusal = FailingWith(new UnauthorizedAccessException());

        Assert.Equal($"{Target} may not be written there; choose a folder you own or ask for the right to write.", refusal);
    }

    [Fact]
    public void An_old_file_survives_a_write_that_fails()
    {
        File.WriteAllText(Target, "last year's sheet");

        var refusal = FailingWith(new IOException("The cable was pulled."), overwrite: true);

        Assert.Equal($"{Target} was not written (The cable was pulled); choose another place.", refusal);
        Assert.Equal("last year's sheet", File.ReadAllText(Target));
        Assert.Equal([Target], Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void A_file_that_appears_meanwhile_is_not_overwritten()
    {
        var file = WholeFile.At(Target, overwrite: false);

        var refusal = Assert.Throws<SheetWriteException>(() => file.Write(_ => File.WriteAllText(Target, "somebody else's")));

        Assert.Contains("already there", refusal.Message, StringComparison.Ordinal);
        Assert.Equal("somebody else's", File.ReadAllText(Target));
        Assert.Equal([Target], Directory.GetFileSystemEntries(folder));
    }

    private static string Refused(string path, bool overwrite = false) =>
        Assert.Throws<SheetWriteException>(() => BuildSheetWriter.WriteFile(KestrelPickup.Sheet, path, overwrite)).Message;

    /// <summary>Some bytes reach the disk, then the trouble comes.</summary>
    private string FailingWith(Exception trouble, bool overwrite = false) =>
        Assert.Throws<SheetWriteException>(() => WholeFile.At(Target, overwrite).Write(stream =>
        {
            stream.Write("%PDF-1.7"u8);
            throw trouble;
        })).Message;
}
