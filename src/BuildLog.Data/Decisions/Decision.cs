using BuildLog.Data.Days;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Decisions;

/// <summary>What was decided about a vehicle, why, and who agreed.</summary>
public sealed class Decision : Dated
{
    public Decision(Vehicle vehicle) => VehicleId = vehicle.Id;

    private Decision() { }

    public long VehicleId { get; internal set; }

    public string What
    {
        get;
        set => field = value.Trim();
    } = "";

    public string Why { get; set; } = "";

    /// <summary>Who agreed: the owner, where it is his money.</summary>
    public string AgreedBy { get; set; } = "";

    public override void Check()
    {
        TextRules.CheckTitle(What, new Later("decision"), "axle 3.08 instead of 3.55");
        TextRules.CheckText(Why, new Later("reason"));
        TextRules.CheckLine(AgreedBy, new Later("name of who agreed"), "Agnes Thorley");
        TextRules.CheckDay(Date, new Later("day of the decision"));
    }

    public override string ToString() => What;
}
