using BuildLog.Data;
using BuildLog.Data.Attachments;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Papers;

/// <summary>What the keys of the page of papers do. Each act returns what happened, or null if nothing did.</summary>
/// <param name="shop">The record.</param>
/// <param name="open">Shows a file; returns a sentence where nothing on the machine does.</param>
public sealed class PapersActs(Shop shop, Func<string, string?> open)
{
    private readonly AttachmentStore store = AttachmentStore.Beside(shop.Path);

    public PapersActs(Shop shop)
        : this(shop, SystemViewer.Open) { }

    public PapersModel Read(long vehicleId) => new([.. All(vehicleId).Select(Row)]);

    public string? Attach(IFormHost host, long vehicleId)
    {
        var vehicle = shop.FindVehicle(vehicleId);
        return host.Fill(PaperForm.New(vehicle.Name, (path, edit) => Keep(vehicle, path, edit))) ? "Kept: a copy lies with the record." : null;
    }

    public string? Edit(IFormHost host, long vehicleId, PaperRow row)
    {
        var (_, paper) = Find(vehicleId, row);
        return host.Fill(PaperForm.For(paper, edit => shop.Change(paper, edit))) ? $"Changed: {row.FileName}." : null;
    }

    /// <summary>Shows a copy of the file under its own name, so that the viewer knows its kind and cannot harm the original.</summary>
    public string Open(long vehicleId, PaperRow row)
    {
        var (_, paper) = Find(vehicleId, row);
        using var file = store.Open(paper.Sha256);
        if (!file.IsSound) return Trouble(file)!;

        var copy = Path.Combine(Directory.CreateTempSubdirectory("buildlog-paper-").FullName, paper.FileName);
        using (var to = new FileStream(copy, FileMode.CreateNew)) file.Content.CopyTo(to);
        return open(copy) ?? $"Handed to the system's viewer: {paper.FileName}.";
    }

    public string? SaveCopy(IFormHost host, long vehicleId, PaperRow row)
    {
        var (_, paper) = Find(vehicleId, row);
        return host.Fill(PaperForm.Copy(paper.FileName, path => WriteCopy(paper, path))) ? $"Saved: a copy of {paper.FileName}." : null;
    }

    public string Strike(long vehicleId, PaperRow row)
    {
        shop.Remove(Find(vehicleId, row).Paper);
        return $"Struck: {row.FileName}. z brings it back.";
    }

    private static string? Trouble(OpenedAttachment file) => file.State switch
    {
        FileState.Sound => null,
        FileState.Missing => $"The file is missing; it should lie at {file.Path}. A backup may have it.",
        _ => $"The file at {file.Path} is no longer what was put in. A backup may have it.",
    };

    private static string Size(long bytes) => bytes switch
    {
        < 1024 => FormattableString.Invariant($"{bytes} bytes"),
        < 1024 * 1024 => FormattableString.Invariant($"{bytes / 1024.0:0} kB"),
        _ => FormattableString.Invariant($"{bytes / 1024.0 / 1024.0:0.0} MB"),
    };

    private PaperRow Row((string About, Attachment Paper) item)
    {
        using var file = store.Open(item.Paper.Sha256);
        return new(item.Paper.Id, item.Paper.FileName, item.Paper.Caption, item.About, item.Paper.MediaType, Size(item.Paper.Length), item.Paper.Taken?.Text ?? "", Trouble(file));
    }

    private void Keep(Vehicle vehicle, string path, Action<Attachment> edit)
    {
        using var content = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
        var stored = store.Put(content);
        var paper = new Attachment(vehicle) { Sha256 = stored.Sha256, Length = stored.Length, FileName = Path.GetFileName(path), MediaType = FileKind.Of(path) };
        edit(paper);
        shop.Add(paper);
    }

    private SaveOutcome WriteCopy(Attachment paper, string path)
    {
        using var file = store.Open(paper.Sha256);
        if (!file.IsSound) return SaveOutcome.Refuse(Trouble(file)!);
        using var to = new FileStream(path, FileMode.CreateNew);
        file.Content.CopyTo(to);
        return SaveOutcome.Done;
    }

    private IEnumerable<(string About, Attachment Paper)> All(long vehicleId)
    {
        var vehicle = shop.FindVehicle(vehicleId);
        return shop.AttachmentsOf(vehicle).Select(paper => ("", paper))
            .Concat(shop.Jobs(vehicle).SelectMany(job => shop.AttachmentsOf(job).Select(paper => ($"job {job.Title}", paper))))
            .Concat(shop.Sessions(vehicle).SelectMany(session => shop.AttachmentsOf(session).Select(paper => (session.Method, paper))));
    }

    private (string About, Attachment Paper) Find(long vehicleId, PaperRow row) => All(vehicleId).First(item => item.Paper.Id == row.Id);
}
