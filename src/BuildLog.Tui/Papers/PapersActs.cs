using BuildLog.Data;
using BuildLog.Data.Attachments;
using BuildLog.Data.Files;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Papers;

/// <summary>What the keys of the page of papers do. Each act returns what happened, or null if nothing did.</summary>
/// <param name="shop">The record.</param>
/// <param name="open">Shows a file; returns a sentence where nothing on the machine does.</param>
public sealed class PapersActs(Shop shop, Func<string, string?> open)
{
    public PapersActs(Shop shop)
        : this(shop, SystemViewer.Open) { }

    public PapersModel Read(long vehicleId) => new([.. All(vehicleId).Select(Row)]);

    public string? Attach(IFormHost host, long vehicleId)
    {
        var vehicle = shop.FindVehicle(vehicleId);
        return host.Fill(PaperForm.New(vehicle.Name, (path, caption, taken) => shop.Attach(vehicle, path, caption: caption, taken: taken))) ? Spoken("Kept: a copy lies with the record.") : null;
    }

    public string? Edit(IFormHost host, long vehicleId, PaperRow row)
    {
        var (_, paper) = Find(vehicleId, row);
        return host.Fill(PaperForm.For(paper, edit => shop.Change(paper, edit))) ? Spoken($"Changed: {row.FileName}.") : null;
    }

    /// <summary>Shows a copy of the file under its own name, so that the viewer knows its kind and cannot harm the original.</summary>
    public string Open(long vehicleId, PaperRow row)
    {
        var (_, paper) = Find(vehicleId, row);
        using var file = shop.OpenFile(paper);
        if (!file.IsSound) return Trouble(file)!;

        var copy = Path.Combine(Directory.CreateTempSubdirectory("buildlog-paper-").FullName, paper.FileName);
        using (var to = OwnerOnly.NewFile(copy)) file.Content.CopyTo(to);
        return open(copy) ?? Spoken($"Handed to the system's viewer: {paper.FileName}.");
    }

    public string? SaveCopy(IFormHost host, long vehicleId, PaperRow row)
    {
        var (_, paper) = Find(vehicleId, row);
        return host.Fill(PaperForm.Copy(paper.FileName, path => WriteCopy(paper, path))) ? Spoken($"Saved: a copy of {paper.FileName}.") : null;
    }

    public string Strike(long vehicleId, PaperRow row)
    {
        shop.Remove(Find(vehicleId, row).Paper);
        return Spoken($"Struck: {row.FileName}. z brings it back.");
    }

    private static string? Trouble(OpenedAttachment file) => Trouble(file.State, file.Path);

    private static string? Trouble(FileState state, string path) => state switch
    {
        FileState.Sound => null,
        FileState.Missing => Spoken($"The file is missing; it should lie at {path}. A backup may have it."),
        _ => Spoken($"The file at {path} is no longer what was put in. A backup may have it."),
    };

    private PaperRow Row((string About, Attachment Paper) item)
    {
        var (state, path) = shop.LookAt(item.Paper);
        return new(item.Paper.Id, item.Paper.FileName, item.Paper.Caption, item.About, item.Paper.MediaType, FileSize.InWords(item.Paper.Length), item.Paper.Taken?.Text ?? "", Trouble(state, path));
    }

    private SaveOutcome WriteCopy(Attachment paper, string path)
    {
        using var file = shop.OpenFile(paper);
        if (!file.IsSound) return SaveOutcome.Refuse(Trouble(file)!);
        WholeFile.At(path, overwrite: false, paper.FileName).Write(to =>
        {
            file.Content.CopyTo(to);
            return true;
        });
        return SaveOutcome.Done;
    }

    private IEnumerable<(string About, Attachment Paper)> All(long vehicleId)
    {
        var vehicle = shop.FindVehicle(vehicleId);
        return shop.AttachmentsWith(vehicle).Select(place => (place.Attachment.AboutUid == vehicle.Uid ? "" : place.About, place.Attachment));
    }

    private (string About, Attachment Paper) Find(long vehicleId, PaperRow row) => All(vehicleId).First(item => item.Paper.Id == row.Id);
}
