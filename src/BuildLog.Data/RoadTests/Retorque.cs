using BuildLog.Data.Vehicles;

namespace BuildLog.Data.RoadTests;

/// <summary>A bolt tightened again after the shakedown: what, to which torque, when, and who signs for it.</summary>
public sealed class Retorque : Entered
{
    public Retorque(Vehicle vehicle) => VehicleId = vehicle.Id;

    internal Retorque() { }

    public long VehicleId { get; internal set; }

    public DateOnly Date { get; set; }

    public string What
    {
        get;
        set => field = value.Trim();
    } = "";

    /// <summary>The torque it was tightened to.</summary>
    public Noted? Torque { get; set; }

    public string Initials
    {
        get;
        set => field = value.Trim();
    } = "";

    public override void Check()
    {
        TextRules.CheckDay(Date, new Later("day of the re-torque"));
        TextRules.CheckTitle(What, new Later("bolt"), "propshaft flange, rear");
        TextRules.CheckTitle(Initials, new Later("initials"), "AT");
    }
}
