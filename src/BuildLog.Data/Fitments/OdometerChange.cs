using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Fitments;

/// <summary>Why an odometer starts anew.</summary>
public enum OdometerChanged
{
    Replaced,
    Reset,
    RolledOver,
}

public static class OdometerChangedWords
{
    public static string InWords(this OdometerChanged changed) => changed switch
    {
        OdometerChanged.Replaced => Spoken("replaced"),
        OdometerChanged.Reset => Spoken("reset"),
        OdometerChanged.RolledOver => Spoken("rolled over"),
        _ => throw new ArgumentOutOfRangeException(nameof(changed), changed, "No such change."),
    };
}

/// <summary>The odometer was replaced, reset or rolled over: from then on it may show less than before.</summary>
public sealed class OdometerChange : Entered
{
    public OdometerChange(Vehicle vehicle, OdometerChanged how) => (VehicleId, How) = (vehicle.Id, how);

    internal OdometerChange() { }

    public long VehicleId { get; internal set; }

    public OdometerChanged How { get; internal set; }

    public DateOnly Day { get; set; }

    /// <summary>Which of that day's changes it was, in the whole shop.</summary>
    public int Order { get; internal set; }

    /// <summary>What it showed last; null where nobody read it.</summary>
    public OdometerReading? Last { get; set; }

    /// <summary>What it showed first after the change.</summary>
    public OdometerReading? First { get; set; }

    public string Reason { get; set; } = "";

    internal Moment When => new(Day, Order);

    public override void Check()
    {
        TextRules.CheckDay(Day, new Later("day the odometer changed"));
        TextRules.CheckLine(Reason, new Later("reason"), "cable drive worn out");
        if (First is null) throw new RefusedException("odometer", Spoken($"What does the odometer show now that it is {How.InWords()}?"), "0 km");
    }
}
