using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Goals;

namespace BuildLog.Data.Goals;

/// <summary>A hill to hold a road speed on, as it was typed.</summary>
public sealed class HillGoalEntry : GoalEntry
{
    public HillGoalEntry(Vehicle vehicle) => VehicleId = vehicle.Id;

    internal HillGoalEntry() { }

    /// <summary>Such as <c>6 %</c>.</summary>
    public string Gradient { get; set; } = "";

    /// <summary>Road speed, such as <c>100 km/h</c>.</summary>
    public string Speed { get; set; } = "";

    /// <summary>The gear by its name; empty for the top one.</summary>
    public string Gear { get; set; } = "";

    /// <summary>What the texts mean.</summary>
    /// <exception cref="Gearing.Quantities.RefusedException">One of the texts means nothing.</exception>
    public HillGoal Read() => HillGoal.Read(Gradient, Speed, Gear).OrRefuse();

    public override void Check() => _ = Read();

    internal override Later KindInWords => new Later("hill goal");

    public override string ToString() => Spoken($"{Gradient} at {Speed}");
}
