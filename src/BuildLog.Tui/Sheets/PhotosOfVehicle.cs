using System.Text.RegularExpressions;
using BuildLog.Data.Attachments;
using BuildLog.Sheet.Content;

namespace BuildLog.Tui.Sheets;

/// <summary>The photos of a vehicle for its sheet. One whose name or caption begins with "before" or "after" says so; the first that says neither stands beside the title.</summary>
internal static partial class PhotosOfVehicle
{
    /// <summary>Null where there is none.</summary>
    public static SheetPhoto? Title(VehicleFolder folder, Guid vehicle)
        => Photos(folder).FirstOrDefault(photo => photo.AboutUid == vehicle && Moment(photo) == PhotoMoment.Any) is { } front ? Opened(folder, front) : null;

    /// <summary>All but the title's: what belongs to one thing stays together, before it and after it side by side.</summary>
    public static IEnumerable<SheetPhoto> Rest(VehicleFolder folder, Guid vehicle)
    {
        var title = Photos(folder).FirstOrDefault(photo => photo.AboutUid == vehicle && Moment(photo) == PhotoMoment.Any);
        return Photos(folder).Where(photo => photo != title)
            .GroupBy(photo => photo.AboutUid)
            .SelectMany(about => about.OrderBy(photo => Moment(photo) == PhotoMoment.Any).ThenBy(Moment))
            .Select(photo => Opened(folder, photo));
    }

    private static IEnumerable<Attachment> Photos(VehicleFolder folder)
    {
        var receipts = folder.Costs.Select(cost => cost.ReceiptId).OfType<long>().ToHashSet();
        return folder.Attachments.Where(paper => paper.MediaType.StartsWith("image/", StringComparison.OrdinalIgnoreCase) && !receipts.Contains(paper.Id));
    }

    // A file that is gone or altered has nothing to print: the sheet names it and goes on.
    private static SheetPhoto Opened(VehicleFolder folder, Attachment photo)
    {
        using var stored = folder.Files.Open(photo.Sha256);
        using var bytes = new MemoryStream();
        stored.Content?.CopyTo(bytes);
        return new(photo.FileName, bytes.ToArray(), Caption(photo), Moment(photo));
    }

    private static PhotoMoment Moment(Attachment photo) => BeforeOrAfter().Match(Words(photo)).Groups["moment"].Value.ToUpperInvariant() switch
    {
        "BEFORE" => PhotoMoment.Before,
        "AFTER" => PhotoMoment.After,
        _ => PhotoMoment.Any,
    };

    private static string? Caption(Attachment photo)
        => BeforeOrAfter().Replace(Words(photo), "").Trim(' ', '-', '_', ':', ',') is { Length: > 0 } rest ? rest : null;

    private static string Words(Attachment photo) => photo.Caption.Length > 0 ? photo.Caption : Path.GetFileNameWithoutExtension(photo.FileName);

    [GeneratedRegex(@"^(?<moment>before|after)(?![\p{L}\d])|[-_ :,]+(?<moment>before|after)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex BeforeOrAfter();
}
