namespace BuildLog.Sheet;

/// <summary>A file that is written whole or not at all: into a temporary file beside it, which then takes its name.</summary>
internal sealed class WholeFile
{
    private readonly string path;
    private readonly string folder;
    private readonly bool overwrite;

    private WholeFile(string path, string folder, bool overwrite) =>
        (this.path, this.folder, this.overwrite) = (path, folder, overwrite);

    /// <exception cref="SheetWriteException">It cannot be written there, or a file is there and may not be overwritten.</exception>
    public static WholeFile At(string path, bool overwrite)
    {
        if (string.IsNullOrWhiteSpace(path) || path.Contains('\0', StringComparison.Ordinal))
            throw new SheetWriteException(Spoken("No file name was given; give one such as kestrel.pdf."));

        var full = Resolved(path);
        if (Directory.Exists(full) || Path.GetFileName(full).Length == 0)
            throw new SheetWriteException(Spoken($"{path} is a folder; give a file name in it, such as {Path.Combine(path, "kestrel.pdf")}."));

        var folder = Path.GetDirectoryName(full)!;
        if (!Directory.Exists(folder))
            throw new SheetWriteException(Spoken($"There is no folder {folder} to write {Path.GetFileName(full)} into; make it first or choose another."));

        if (File.Exists(full) && !overwrite) throw Exists(full);

        return new WholeFile(full, folder, overwrite);
    }

    /// <exception cref="SheetWriteException">It was not written; nothing is left behind.</exception>
    public void Write(Action<Stream> write)
    {
        var temporary = Path.Combine(folder, $".{Guid.NewGuid():N}.part");
        try
        {
            using (var stream = new FileStream(temporary, OwnersOwn()))
            {
                write(stream);
                stream.Flush(flushToDisk: true);
            }

            File.Move(temporary, path, overwrite);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw SentenceFor(trouble, trouble.Message.Replace(temporary, path, StringComparison.Ordinal), Removed(temporary));
        }
    }

    // A sheet names owners and numbers; whom it is handed to is the owner's to say.
    private static FileStreamOptions OwnersOwn()
    {
        var how = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows()) how.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        return how;
    }

    /// <summary>A link is followed, so that the file it points to is replaced and not the link.</summary>
    private static string Resolved(string path)
    {
        try
        {
            var full = new FileInfo(Path.GetFullPath(path));
            return full.LinkTarget is null ? full.FullName : full.ResolveLinkTarget(returnFinalTarget: true)!.FullName;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new SheetWriteException(Spoken($"{path} cannot be reached ({trouble.Message}); choose another place."), trouble);
        }
    }

    private SheetWriteException SentenceFor(Exception trouble, string reason, string leftOver)
    {
        if (!overwrite && File.Exists(path)) return Exists(path);

        var sentence = trouble switch
        {
            _ when DiskFull.Is(trouble) => Spoken($"The disk is full, so {path} was not written; free some space or choose another disk"),
            UnauthorizedAccessException => Spoken($"{path} may not be written there; choose a folder you own or ask for the right to write"),
            _ => Spoken($"{path} was not written ({reason.TrimEnd('.')}); choose another place"),
        };
        return new SheetWriteException($"{sentence}{leftOver}.", trouble);
    }

    private static SheetWriteException Exists(string path) =>
        new(Spoken($"{path} is already there; give another name or allow it to be overwritten.")) { AlreadyThere = true };

    /// <summary>Nothing to say when the temporary file is gone; otherwise where it is.</summary>
    private static string Removed(string temporary)
    {
        try
        {
            File.Delete(temporary);
            return "";
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return Spoken($" (a part of it is left in {temporary}, which may be deleted)");
        }
    }
}
