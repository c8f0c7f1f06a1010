using BuildLog.Data.Attachments;
using BuildLog.Data.Files;
using BuildLog.Data.Moving;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data;

/// <summary>Taking the record, or one vehicle, to another shop.</summary>
public sealed partial class Shop
{
    /// <summary>Writes a zip of JSON with the attachments; docs/export describes it.</summary>
    /// <param name="file">The zip.</param>
    /// <param name="vehicle">Only what belongs to it; null for everything.</param>
    /// <param name="overwrite">Replace a file of that name.</param>
    /// <exception cref="RecordException">It cannot be written; nothing is left behind.</exception>
    public ExportReport Export(string file, Vehicle? vehicle = null, bool overwrite = false)
        => store.Read(db => Moving.Export.To(db, Path, file, vehicle, overwrite));

    /// <summary>Writes the zip that goes with a vehicle to its next shop: what <see cref="Export"/> writes of it, with papers and photos for people.</summary>
    /// <param name="file">The zip.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="handover">The papers, and how a photo is made fit to leave.</param>
    /// <param name="overwrite">Replace a file of that name.</param>
    /// <exception cref="RecordException">It cannot be written; nothing is left behind.</exception>
    public ExportReport HandOver(string file, Vehicle vehicle, Handover handover, bool overwrite = false)
        => store.Read(db => Moving.Export.To(db, Path, file, vehicle, overwrite, handover));

    /// <summary>Merges what another shop, or an earlier day, has exported: all of it or nothing.</summary>
    /// <param name="file">The zip.</param>
    /// <param name="dryRun">Only say what would come of it.</param>
    /// <exception cref="RefusedException">It is no export, or something in it cannot be; nothing is imported.</exception>
    /// <exception cref="RecordException">The file cannot be read or the record not written; nothing is imported.</exception>
    public ImportReport Import(string file, bool dryRun = false)
    {
        var full = System.IO.Path.GetFullPath(file);
        using var stream = FileTroubles.Guard(full, () => OpenExport(full));
        using var archive = Archive.Open(stream, store.Read(db => Moving.Import.FilesOf(db.Model)));
        if (dryRun) return store.Try(db => Moving.Import.From(db, archive)) with { IsDry = true };

        return store.Write(db =>
        {
            var report = Moving.Import.From(db, archive);
            db.Journal.Did(() => FormattableString.Invariant($"imported {report.Added.Values.Sum()} entries from {System.IO.Path.GetFileName(full)}"));

            // Before the entries that name them count: a file too many does no harm, one too few does.
            var attachments = AttachmentStore.Beside(Path);
            foreach (var sha256 in archive.Attachments)
            {
                using var content = archive.OpenAttachment(sha256);
                attachments.Put(content);
            }

            return report;
        });
    }

    private static FileStream OpenExport(string file)
    {
        if (Directory.Exists(file)) throw new RecordException(Fault.Folder, Spoken($"{file} is a folder. Name the zip in it."));
        if (!File.Exists(file)) throw new RecordException(Fault.NoRecord, Spoken($"There is no file {file}."));
        return new(file, FileMode.Open, FileAccess.Read, FileShare.Read);
    }
}
