using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Files;

/// <summary>Says in a sentence what SQLite and the file system say in numbers.</summary>
internal static class FileTroubles
{
    public static string TakeABackup => Spoken("Keep it as it is, and restore the newest copy from its backups folder: buildlog restore FILE.");

    /// <summary>Does the work; its trouble with the file becomes a sentence.</summary>
    /// <param name="path">The file to name.</param>
    /// <param name="work">What may fail.</param>
    /// <param name="first">Knows better what some troubles mean here; null from it leaves them to <see cref="Explain"/>.</param>
    /// <exception cref="RecordException">It failed.</exception>
    public static T Guard<T>(string path, Func<T> work, Func<Exception, RecordException?>? first = null)
    {
        try
        {
            return work();
        }
        catch (Exception trouble) when (trouble is not RecordException && (first?.Invoke(trouble) ?? Explain(trouble, path)) is { } explained)
        {
            throw explained;
        }
    }

    /// <summary>Null for what is no trouble with the file but a mistake in the program.</summary>
    public static RecordException? Explain(Exception trouble, string path)
    {
        for (var cause = trouble; cause is not null; cause = cause.InnerException)
        {
            switch (cause)
            {
                case RecordException: return null;
                case DbUpdateConcurrencyException: return RecordException.Since(Spoken("changed"));
                case SqliteException sqlite:
                    var (fault, sentence) = InWords(sqlite.SqliteErrorCode, sqlite.SqliteExtendedErrorCode, sqlite.Message, path);
                    return new(fault, sentence, trouble);
                case UnauthorizedAccessException:
                    return new(Fault.NotWritable, NotWritable(path), trouble);
                case FileNotFoundException or DirectoryNotFoundException:
                    return new(Fault.CannotOpen, CannotOpen(path), trouble);
                case IOException full when IoErrors.IsDiskFull(full):
                    return new(Fault.DiskFull, DiskFull(path), trouble);
                case IOException locked when IoErrors.IsReadOnly(locked):
                    return new(Fault.NotWritable, NotWritable(path), trouble);
                case IOException io:
                    return new(Fault.ReadFailed, Spoken($"{path} cannot be used ({io.Message.TrimEnd('.')}). Name another file with --database."), trouble);
            }
        }

        return null;
    }

    internal static (Fault Fault, string Sentence) InWords(int code, int extended, string message, string path) => (code, extended) switch
    {
        (26, _) => (Fault.NotADatabase, Spoken($"{path} is not a BuildLog record (or it is encrypted). It was not touched; name another file with --database.")),
        (11, _) => (Fault.Damaged, Damaged(path)),
        (1, _) when message.Contains("no such", StringComparison.Ordinal) || message.Contains("already exists", StringComparison.Ordinal) => (Fault.Damaged, Damaged(path)),
        (5 or 6, _) => (Fault.Busy, Spoken($"Another program is writing to {path}. Nothing was changed; wait a moment or close it, and try again.")),
        (8, _) => (Fault.NotWritable, NotWritable(path)),
        (13, _) or (10, 4874) => (Fault.DiskFull, DiskFull(path)), // the second: no room for the memory that programs share beside the file
        (10, 778) => (Fault.NotWritable, Spoken($"Writing {path} failed. See that you still have the right to write there, and that the disk or stick is in place and sound.")),
        (14, _) => (Fault.CannotOpen, CannotOpen(path)),
        (10 or 15, _) => (Fault.ReadFailed, Spoken($"Reading or writing {path} failed (SQLite {extended}). If it lies on a network folder or a stick, copy it to this computer's own disk.")),
        (19, 1811) when !message.Contains("FOREIGN KEY", StringComparison.Ordinal) => (Fault.Refused, OwnWords(message)),
        (19, 787 or 1811) => (Fault.Refused, Spoken("Nothing was changed: something else in the record still refers to this, or what it refers to is gone.")),
        (19, 2067 or 1555) => (Fault.Refused, Spoken("Nothing was changed: the record already holds one like it, entered meanwhile. Look again and try once more.")),
        (19, _) => (Fault.Refused, Spoken($"Nothing was changed: the record does not allow this value ({Constraint(message)}).")),
        _ => (Fault.Other, Spoken($"{path} cannot be used (SQLite {extended}: {message}). Close other programs that use it and try again.")),
    };

    internal static RecordException Damaged(string path, Exception? trouble) => new(Fault.Damaged, Damaged(path), trouble);

    private static string Damaged(string path) => Spoken($"{path} is damaged. {TakeABackup}");

    private static string CannotOpen(string path)
        => Spoken($"{path} cannot be opened: its folder is missing, or you may not read it or create files there. Name another file with --database.");

    private static string DiskFull(string path)
        => Spoken($"The disk that holds {path} is full. Nothing of the last change was stored; free some space and try again.");

    internal static string NotWritable(string path)
        => Spoken($"{path} or its folder cannot be written. Give yourself the right to write there, or name another file with --database.");

    // "SQLite Error 19: 'our own sentence'."
    private static string OwnWords(string message)
    {
        int from = message.IndexOf('\'', StringComparison.Ordinal), to = message.LastIndexOf('\'');
        return from >= 0 && to > from ? message[(from + 1)..to] : message;
    }

    private static string Constraint(string message) => OwnWords(message).Split(": ")[^1];
}
