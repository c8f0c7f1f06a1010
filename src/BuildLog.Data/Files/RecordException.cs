namespace BuildLog.Data.Files;

/// <summary>Why the record cannot be read or written.</summary>
public enum Fault
{
    Other,
    Folder,
    NoFolder,
    NoRecord,
    Exists,
    NotWritable,
    Empty,
    NotADatabase,
    NotOurs,
    Newer,
    Damaged,
    Busy,
    DiskFull,
    CannotOpen,
    ReadFailed,
    ChangedSince,
    Refused,
}

/// <summary>The record cannot be read or written; the message is a sentence for its owner, with a way out.</summary>
public sealed class RecordException : Exception
{
    public RecordException(Fault fault, string sentence, Exception? inner = null) : base(sentence, inner) => Fault = fault;

    public RecordException(string message, Exception inner) : this(Fault.Other, message, inner) { }

    public RecordException(string message) : this(Fault.Other, message) { }

    public RecordException() : this(Spoken("The record cannot be used.")) { }

    public Fault Fault { get; }

    internal static RecordException Since(string what)
        => new(Fault.ChangedSince, Spoken($"This was {what} by another window or program since you opened it. Look at it again and make your change once more."));
}
