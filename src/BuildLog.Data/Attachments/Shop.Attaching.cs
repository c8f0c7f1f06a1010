using BuildLog.Data.Attachments;
using BuildLog.Data.Days;
using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data;

/// <summary>Photos, receipts and papers.</summary>
public sealed partial class Shop
{
    private SeenFiles? seen; // the first list need not wait for it

    private AttachmentStore AttachedFiles => AttachmentStore.Beside(Path);

    /// <summary>Copies a file beside the record and notes what it is about; the same content is kept once.</summary>
    /// <param name="about">What it is about.</param>
    /// <param name="file">The file, which stays where it is.</param>
    /// <param name="what">What it is; null for what its ending says.</param>
    /// <param name="caption">What it shows; it may be empty.</param>
    /// <param name="taken">When the photo was taken or the paper written.</param>
    /// <exception cref="RefusedException">There is no such file, or it is empty or too large; nothing is stored.</exception>
    /// <exception cref="RecordException">It cannot be read, or the record not written; nothing is stored.</exception>
    public Attachment Attach(Kept about, string file, AttachmentKind? what = null, string caption = "", LooseDay? taken = null)
    {
        var full = System.IO.Path.GetFullPath(file);
        if (!File.Exists(full))
            throw new RefusedException("file", Directory.Exists(full) ? Spoken($"{full} is a folder. Name the file in it.") : Spoken($"There is no file {full}."), "pinion.jpg");

        StoredFile stored;
        using (var content = FileTroubles.Guard(full, () => File.OpenRead(full), trouble => trouble is IOException or UnauthorizedAccessException
            ? new(Fault.ReadFailed, Spoken($"{full} cannot be read ({trouble.Message.TrimEnd('.')}). Name another file."), trouble)
            : null))
        {
            stored = AttachedFiles.Put(content);
        }

        var type = MediaTypes.Of(full);
        return Add(new Attachment(about)
        {
            FileName = System.IO.Path.GetFileName(full),
            MediaType = type,
            What = what ?? MediaTypes.Usually(type),
            Length = stored.Length,
            Sha256 = stored.Sha256,
            Caption = caption,
            Taken = taken,
        });
    }

    /// <summary>The attachments of a vehicle, of its jobs and papers, and of every part that was ever on it.</summary>
    public IReadOnlyList<AttachmentPlace> AttachmentsWith(Vehicle vehicle) => store.Read(db => AttachmentPlace.Of(db, vehicle));

    /// <summary>Opens an attached file after comparing all of it with what was attached.</summary>
    public OpenedAttachment OpenFile(Attachment attachment) => AttachedFiles.Open(attachment.Sha256);

    /// <summary>How an attached file is and where it lies; all of it is compared the first time, and again when it looks another.</summary>
    public (FileState State, string Path) LookAt(Attachment attachment) => ((seen ??= new()).Look(AttachedFiles, attachment.Sha256), AttachedFiles.PlaceOf(attachment.Sha256));

    /// <summary>The vehicle, part, job or other thing of this name, or the only one whose name begins so; also by its identifier.</summary>
    /// <exception cref="RefusedException">None or several; the sentence lists them.</exception>
    public Kept FindNamed(string beginning) => store.Read(db => NamedRecords.Find(db, beginning));
}
