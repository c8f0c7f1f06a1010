using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Vehicles;

/// <summary>A project vehicle.</summary>
public sealed class Vehicle : Entered
{
    /// <summary>What the shop calls it; no other vehicle is called so, large and small letters being alike.</summary>
    public string Name
    {
        get;
        set
        {
            field = value.Trim();
            NameKey = KeyOf(field);
        }
    } = "";

    public VehicleState State { get; set; } = VehicleState.Planned;

    public string Owner { get; set; } = "";

    /// <summary>Chassis or vehicle identity number, as stamped.</summary>
    public string ChassisNumber { get; set; } = "";

    public string Registration { get; set; } = "";

    /// <summary>The driveline is computed through the front axle although a rear one is fitted.</summary>
    public bool DrivesInFront { get; set; }

    /// <summary>The unit of an odometer reading that was typed bare.</summary>
    public OdometerUnit OdometerUnit { get; set; }

    public string Notes { get; set; } = "";

    /// <summary>The name as it is compared: SQLite folds the case of plain English letters only.</summary>
    internal string NameKey { get; set; } = "";

    public override void Check()
    {
        if (Name.Length == 0) throw new RefusedException("vehicle", "A vehicle needs a name.", "Brindle");
        if (Name.Length > 60 || Name.Any(char.IsControl))
            throw new RefusedException("vehicle", "A vehicle's name is one line of at most 60 characters.", "Brindle");
    }

    public override string ToString() => Name;

    internal static string KeyOf(string name) => name.Trim().Normalize().ToUpperInvariant();
}
