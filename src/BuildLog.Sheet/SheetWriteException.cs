namespace BuildLog.Sheet;

/// <summary>The sheet could not be written. The message is one sentence for the user; nothing was left behind or changed.</summary>
public sealed class SheetWriteException : Exception
{
    public SheetWriteException()
    {
    }

    public SheetWriteException(string message)
        : base(message)
    {
    }

    public SheetWriteException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>Only because a file of that name is there, which may be replaced if that is asked for.</summary>
    public bool AlreadyThere { get; init; }
}
