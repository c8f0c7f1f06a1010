using BuildLog.Data.Moving;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Goals;

namespace BuildLog.Data.Goals;

/// <summary>Something an owner wants of a vehicle.</summary>
public abstract class GoalEntry : Entered
{
    public long VehicleId { get; internal set; }
}

/// <summary>A cruise goal as it was typed.</summary>
public sealed class CruiseGoalEntry : GoalEntry
{
    public CruiseGoalEntry(Vehicle vehicle) => VehicleId = vehicle.Id;

    internal CruiseGoalEntry() { }

    /// <summary>Road speed, such as <c>110 km/h</c>.</summary>
    public string Speed { get; set; } = "";

    /// <summary>Engine speed, such as <c>2400 rpm</c>.</summary>
    public string EngineSpeed { get; set; } = "";

    /// <summary><c>5 %</c>, <c>150 rpm</c>, <c>-100/+200 rpm</c> or <c>at most</c>; empty for the usual one.</summary>
    public string Tolerance { get; set; } = "";

    /// <summary>The gear by its name; empty for the top one.</summary>
    public string Gear { get; set; } = "";

    /// <summary>Metres per second, for queries.</summary>
    [Follows]
    internal double SpeedSi { get; set; }

    /// <summary>Revolutions per second, for queries.</summary>
    [Follows]
    internal double EngineSpeedSi { get; set; }

    /// <summary>What the texts mean.</summary>
    /// <exception cref="Gearing.Quantities.RefusedException">One of the texts means nothing.</exception>
    public CruiseGoal Read() => CruiseGoal.Read(Speed, EngineSpeed, Tolerance, Gear).OrRefuse();

    public override void Check()
    {
        var goal = Read();
        (SpeedSi, EngineSpeedSi) = (goal.Speed.Value, goal.EngineSpeed.Value);
    }

    internal override Later KindInWords => new Later("cruise goal");

    public override string ToString() => Spoken($"{Speed} at {EngineSpeed}");
}
