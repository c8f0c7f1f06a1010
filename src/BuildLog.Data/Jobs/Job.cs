using BuildLog.Data.Hunting;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Jobs;

/// <summary>How far a job has come.</summary>
public enum JobState
{
    ToDo,
    UnderWay,
    Done,
    Dropped,
}

public static class JobStateWords
{
    public static string InWords(this JobState state) => state switch
    {
        JobState.ToDo => Spoken("to do"),
        JobState.UnderWay => Spoken("under way"),
        JobState.Done => Spoken("done"),
        JobState.Dropped => Spoken("dropped"),
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "No such state."),
    };
}

/// <summary>Something to be done on a vehicle.</summary>
public sealed class Job : Entered
{
    public Job(Vehicle vehicle) => VehicleId = vehicle.Id;

    internal Job() { }

    public long VehicleId { get; internal set; }

    public string Title
    {
        get;
        set => field = value.Trim();
    } = "";

    public string Description { get; set; } = "";

    public JobState State { get; set; }

    public DateOnly? Due { get; set; }

    /// <summary>The vehicle is not handed over before this is done.</summary>
    public bool BeforeHandover { get; set; }

    /// <summary>What it waits for, in words; empty for nothing.</summary>
    public string BlockedBy { get; set; } = "";

    /// <summary>The wanted part it waits for.</summary>
    public long? WaitsForId { get; set; }

    /// <summary>Loaded with the job.</summary>
    public WantedPart? WaitsFor { get; internal set; }

    public bool IsOpen => State is JobState.ToDo or JobState.UnderWay;

    public bool IsBlocked => IsOpen && (BlockedBy.Length > 0 || WaitsFor is { State: WantedState.Hunting });

    public override void Check()
    {
        TextRules.CheckTitle(Title, new Later("title of the job"), "Rebuild the brake cylinders");
        TextRules.CheckText(Description, new Later("description of the job"));
        TextRules.CheckLine(BlockedBy, new Later("reason for waiting"), "machine shop");
        TextRules.CheckDay(Due, new Later("due date"));
    }

    public override string ToString() => Title;
}
