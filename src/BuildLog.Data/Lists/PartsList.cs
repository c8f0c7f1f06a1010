using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Lists;

/// <summary>Parts with what a shelf list needs; their numbers are entered in the workbench.</summary>
internal sealed class PartsList : SpreadsheetList
{
    private static readonly IReadOnlyDictionary<string, Func<Component>> Kinds = new Func<Component>[]
    {
        () => new EngineComponent(), () => new TransmissionComponent(), () => new OverdriveComponent(), () => new TransferCaseComponent(), PropshaftComponent.Unmeasured,
        () => new AxleComponent(), () => new WheelSetComponent(), () => new SpeedometerComponent(),
    }.ToDictionary(make => make().Kind.Text, StringComparer.OrdinalIgnoreCase);

    public override IReadOnlyList<string> Columns { get; } = ["kind", "name", "serial number", "donor", "shelf", "supplier", "price", "condition", "notes"];

    public override IEnumerable<IReadOnlyList<string>> Rows(ShopContext db, Vehicle? vehicle)
    {
        var onVehicle = vehicle is null ? null : db.Fitments.Where(fitment => fitment.VehicleId == vehicle.Id && fitment.To == null).Select(fitment => fitment.ComponentId).ToHashSet();
        return db.Components.AsEnumerable()
            .Where(part => onVehicle?.Contains(part.Id) != false)
            .OrderBy(part => part.Kind.Text, StringComparer.Ordinal).ThenBy(part => part.Name, StringComparer.Ordinal).ThenBy(part => part.Id)
            .Select(part => (IReadOnlyList<string>)[part.Kind.Text, part.Name, part.SerialNumber, part.Donor, part.Shelf, part.Supplier?.Name ?? "", part.Price?.Listed ?? "", part.Condition ?? "", part.Notes])
            .ToList();
    }

    public override Entered Entry(NamedInRows named, IReadOnlyDictionary<string, string> row)
    {
        if (!Kinds.TryGetValue(row["kind"].Trim(), out var make))
            throw new RefusedException("kind", Spoken($"'{row["kind"]}' is no kind of part; there are {string.Join(", ", Kinds.Keys)}."), "axle");

        var part = make();
        (part.Name, part.SerialNumber, part.Donor, part.Shelf, part.Notes) = (row["name"], row["serial number"], row["donor"], row["shelf"], row["notes"]);
        part.Condition = row["condition"].Trim().Length == 0 ? null : row["condition"];
        (part.SupplierId, part.Price) = (named.Supplier(row["supplier"]), named.Money(row["price"]));
        return part;
    }
}
