using System.Collections.Concurrent;

namespace BuildLog.Data.Attachments;

/// <summary>Which files were sound when all of each was read last: it is read again only once its time or its length is another, so that a list shows at once.</summary>
internal sealed class SeenFiles
{
    private readonly ConcurrentDictionary<string, (DateTime Written, long Length)> sound = [];

    public FileState Look(AttachmentStore store, string sha256)
    {
        var file = new FileInfo(store.PlaceOf(sha256));
        if (file.Exists && sound.TryGetValue(sha256, out var seen) && seen == (file.LastWriteTimeUtc, file.Length)) return FileState.Sound;

        using var opened = store.Open(sha256);
        if (opened.IsSound) sound[sha256] = (file.LastWriteTimeUtc, file.Length);
        return opened.State;
    }
}
