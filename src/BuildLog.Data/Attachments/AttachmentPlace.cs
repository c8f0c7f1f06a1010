using BuildLog.Data.Search;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;

namespace BuildLog.Data.Attachments;

/// <summary>An attachment and what it is about, such as <c>job rear brake lines</c>.</summary>
public sealed record AttachmentPlace(Attachment Attachment, string About)
{
    /// <summary>Of a vehicle, of whatever speaks of it, and of every part that was ever on it with all that speaks of the part; as they were added.</summary>
    internal static IReadOnlyList<AttachmentPlace> Of(ShopContext db, Vehicle vehicle)
    {
        var parts = db.Fitments.Where(fitment => fitment.VehicleId == vehicle.Id).Select(fitment => (long?)fitment.ComponentId);
        var about = db.Set<Findable>().Where(findable => findable.VehicleId == vehicle.Id || parts.Contains(findable.ComponentId));
        return [
            .. db.Set<Attachment>().Join(about, attachment => attachment.AboutUid, findable => findable.RecordUid, (attachment, findable) => new { attachment, findable.Kind, findable.Title })
                .OrderBy(found => found.attachment.Id).AsEnumerable()
                .Select(found => new AttachmentPlace(found.attachment, NamedPart.InWords(Spoken(found.Kind), found.Title))),
        ];
    }
}
