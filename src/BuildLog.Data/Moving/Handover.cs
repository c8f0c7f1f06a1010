using BuildLog.Data.Attachments;

namespace BuildLog.Data.Moving;

/// <summary>What goes with an export when a vehicle is handed over.</summary>
/// <param name="Papers">For people: each under its name.</param>
/// <param name="PhotoCopy">The copy of a photo that may leave the shop, as a plain JPEG; null for what is no photo that can be read.</param>
public sealed record Handover(IReadOnlyList<HandoverPaper> Papers, Func<byte[], byte[]?> PhotoCopy)
{
    /// <summary>It may tell where it was taken, so it does not go along as it is.</summary>
    internal static bool MayBePhoto(Attachment attachment) => MediaTypes.MayBePicture(attachment.MediaType, attachment.FileName);
}

/// <summary>One paper of a handover: <c>build-sheet.pdf</c>.</summary>
public sealed record HandoverPaper(string Name, ReadOnlyMemory<byte> Content);
