using System.Diagnostics.CodeAnalysis;

namespace BuildLog.Data.Attachments;

public enum FileState
{
    /// <summary>It is what was put in.</summary>
    Sound,
    Missing,

    /// <summary>Its content is no longer what was put in.</summary>
    Altered,
}

/// <summary>A file of the store as it was found. That one is missing or altered is a fact to tell, not a failure of the record.</summary>
public sealed class OpenedAttachment : IDisposable
{
    private readonly FileStream? file;

    internal OpenedAttachment(string path, FileState state, FileStream? file = null) => (Path, State, this.file) = (path, state, file);

    public FileState State { get; }

    /// <summary>Where it lies, or would.</summary>
    public string Path { get; }

    /// <summary>From its beginning; null unless it is sound.</summary>
    public Stream? Content => IsSound ? file : null;

    [MemberNotNullWhen(true, nameof(Content), nameof(file))]
    public bool IsSound => State == FileState.Sound && file is not null;

    public void Dispose() => file?.Dispose();
}
