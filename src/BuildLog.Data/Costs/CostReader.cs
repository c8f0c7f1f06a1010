using BuildLog.Data.Rows;

namespace BuildLog.Data.Costs;

/// <summary>Reads costs by hand, each with its supplier, its part and its receipt.</summary>
internal static class CostReader
{
    public static IReadOnlyList<Cost> Joined(Snapshot record, List<Cost> costs)
    {
        record.Suppliers.Load(costs.Select(cost => cost.SupplierId));
        record.Components.Load(costs.Select(cost => cost.ComponentId));
        record.Attachments.Load(costs.Select(cost => cost.ReceiptId));
        foreach (var cost in costs)
        {
            cost.Supplier = record.Suppliers.Named(cost.SupplierId);
            cost.Component = record.Components.Named(cost.ComponentId);
            cost.Receipt = record.Attachments.Named(cost.ReceiptId);
        }

        return costs;
    }

    public static Cost From(Row row) => row.Kept(new Cost
    {
        VehicleId = row.Key("VehicleId"),
        JobId = row.KeyIfAny("JobId"),
        Date = row.Day("Date"),
        DateAsTyped = row.LooseDay("DateAsTyped"),
        What = row.Text("What"),
        Amount = row.Money("Amount"),
        SupplierId = row.KeyIfAny("SupplierId"),
        ComponentId = row.KeyIfAny("ComponentId"),
        ReceiptId = row.KeyIfAny("ReceiptId"),
    });
}
