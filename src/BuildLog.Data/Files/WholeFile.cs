using System.Text;

namespace BuildLog.Data.Files;

/// <summary>A file that somebody asked for: refused before any work is done, and then written whole or not at all.</summary>
/// <remarks>It is written beside its place and takes its name when it is on the disk. Only its owner can read it.</remarks>
public sealed class WholeFile
{
    private readonly string path;

    private WholeFile(string path) => this.path = path;

    public string Path => path;

    /// <param name="path">Where.</param>
    /// <param name="overwrite">Replace a file of that name.</param>
    /// <param name="example">A name to suggest, such as <c>shop.zip</c>.</param>
    /// <exception cref="RecordException">It cannot be written there.</exception>
    public static WholeFile At(string path, bool overwrite, string example)
    {
        var file = System.IO.Path.GetFullPath(path);
        if (Directory.Exists(file)) throw new RecordException(Fault.Folder, Spoken($"{file} is a folder. Name the file in it, such as {System.IO.Path.Combine(file, example)}."));

        var folder = System.IO.Path.GetDirectoryName(file);
        if (!Directory.Exists(folder)) throw new RecordException(Fault.NoFolder, Spoken($"The folder {folder} does not exist. Create it first: {NewFolder.Command(folder)}; or name another place."));
        if (File.Exists(file) && !overwrite) throw new RecordException(Fault.Exists, Spoken($"{file} is there already. Name another file, or replace it with --overwrite."));
        return new(file);
    }

    /// <summary>The same beside a record, which it must not be.</summary>
    /// <exception cref="RecordException">It cannot be written there.</exception>
    public static WholeFile Beside(string record, string path, bool overwrite, string example)
        => System.IO.Path.GetFullPath(path) == System.IO.Path.GetFullPath(record)
            ? throw new RecordException(Fault.Exists, Spoken($"{System.IO.Path.GetFullPath(path)} is the record itself. Name another file, such as {example}."))
            : At(path, overwrite, example);

    /// <exception cref="RecordException">There is no file, and what was there is as it was.</exception>
    public void Write(string text, Encoding encoding) => Write(stream =>
    {
        using var writer = new StreamWriter(stream, encoding, leaveOpen: true);
        writer.Write(text);
        return true;
    });

    /// <exception cref="RecordException">There is no file, and what was there is as it was.</exception>
    public T Write<T>(Func<Stream, T> write) => FileTroubles.Guard(path, () => WriteAndTakeName(write), Explain);

    private T WriteAndTakeName<T>(Func<Stream, T> write)
    {
        var unfinished = $"{path}.{Guid.NewGuid():N}{CheckedCopy.Unfinished}";
        try
        {
            T written;
            using (var stream = OwnerOnly.OpenFile(unfinished))
            {
                written = write(stream);
                stream.Flush(flushToDisk: true);
            }

            FinishedName.Give(unfinished, path);
            return written;
        }
        finally
        {
            File.Delete(unfinished);
        }
    }

    // The record is not at fault here, and is as it was.
    private RecordException? Explain(Exception trouble) => trouble switch
    {
        IOException full when IoErrors.IsDiskFull(full) => new(Fault.DiskFull, Spoken($"The disk is full, so {path} was not written. Free some space, or name a place on another disk."), trouble),
        UnauthorizedAccessException => NotWritable(trouble),
        IOException locked when IoErrors.IsReadOnly(locked) => NotWritable(trouble),
        _ => null,
    };

    private RecordException NotWritable(Exception trouble)
        => new(Fault.NotWritable, Spoken($"{path} cannot be written: give yourself the right to write in its folder, or name another place."), trouble);
}
