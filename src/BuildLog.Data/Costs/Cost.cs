using BuildLog.Data.Attachments;
using BuildLog.Data.Components;
using BuildLog.Data.Days;
using BuildLog.Data.Jobs;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Costs;

/// <summary>Money spent on a vehicle, or got back where the amount is below zero.</summary>
public sealed class Cost : Dated
{
    /// <param name="vehicle">What it was spent on.</param>
    /// <param name="job">The job it belongs to, if one.</param>
    public Cost(Vehicle vehicle, Job? job = null) => (VehicleId, JobId) = (vehicle.Id, job?.Id);

    internal Cost() { }

    public long VehicleId { get; internal set; }

    public long? JobId { get; internal set; }

    public string What
    {
        get;
        set => field = value.Trim();
    } = "";

    public Money? Amount { get; set; }

    public long? SupplierId { get; set; }

    /// <summary>Loaded with the cost.</summary>
    public Supplier? Supplier { get; internal set; }

    /// <summary>The part that was bought.</summary>
    public long? ComponentId { get; set; }

    /// <summary>Loaded with the cost.</summary>
    public Component? Component { get; internal set; }

    /// <summary>Its receipt among the attachments.</summary>
    public long? ReceiptId { get; set; }

    /// <summary>Loaded with the cost.</summary>
    public Attachment? Receipt { get; internal set; }

    public override void Check()
    {
        TextRules.CheckTitle(What, new Later("cost"), "gasket set");
        TextRules.CheckDay(Date, new Later("date of the cost"));
        if (Amount is null) throw new RefusedException("money", Spoken($"What did '{What}' cost?"), "45.50 EUR");
    }
}
