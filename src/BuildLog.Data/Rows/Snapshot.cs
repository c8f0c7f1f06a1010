using BuildLog.Data.Attachments;
using BuildLog.Data.Components;
using BuildLog.Data.Donors;
using BuildLog.Data.Hunting;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Rows;

/// <summary>One state of the record, read by hand.</summary>
internal sealed class Snapshot
{
    public Snapshot(RowReader rows)
    {
        Rows = rows;
        Suppliers = new(ids => SupplierReader.Read(this, ids));
        Donors = new(ids => DonorReader.Read(this, ids));
        Attachments = new(ids => AttachmentReader.Read(this, ids));
        Components = new(ids => ComponentReader.Read(this, ids));
        Wanted = new(ids => WantedReader.Read(this, ids));
        Vehicles = new(ids => VehicleReader.Read(this, ids));
    }

    public RowReader Rows { get; }

    public Known<Supplier> Suppliers { get; }

    public Known<Donor> Donors { get; }

    public Known<Attachment> Attachments { get; }

    public Known<Component> Components { get; }

    public Known<WantedPart> Wanted { get; }

    public Known<Vehicle> Vehicles { get; }

    /// <summary>The record of a kind that others name and are read with; null if it is gone.</summary>
    public Kept? Find(Type kind, long id)
        => kind == typeof(Supplier) ? Find(Suppliers, id)
            : kind == typeof(Donor) ? Find(Donors, id)
            : kind == typeof(Attachment) ? Find(Attachments, id)
            : kind == typeof(Component) ? Find(Components, id)
            : kind == typeof(WantedPart) ? Find(Wanted, id)
            : kind == typeof(Vehicle) ? Find(Vehicles, id)
            : throw new ArgumentOutOfRangeException(nameof(kind), kind, "Nothing is read with such a record.");

    private static T? Find<T>(Known<T> known, long id)
        where T : Kept
    {
        known.Load([id]);
        return known.Holds(id) ? known[id] : null;
    }
}
