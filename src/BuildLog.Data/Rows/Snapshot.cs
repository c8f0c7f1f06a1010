using BuildLog.Data.Attachments;
using BuildLog.Data.Components;
using BuildLog.Data.Donors;
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
        Vehicles = new(ids => VehicleReader.Read(this, ids));
    }

    public RowReader Rows { get; }

    public Known<Supplier> Suppliers { get; }

    public Known<Donor> Donors { get; }

    public Known<Attachment> Attachments { get; }

    public Known<Component> Components { get; }

    public Known<Vehicle> Vehicles { get; }
}
