using BuildLog.Data.Jobs;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data;

/// <summary>Work.</summary>
public sealed partial class Shop
{
    /// <summary>The jobs on a vehicle: what is open first, then by due date.</summary>
    public IReadOnlyList<Job> Jobs(Vehicle vehicle) => store.Look(record => JobList.Of(record, vehicle));

    /// <summary>The time sheet of a vehicle, the latest first.</summary>
    public IReadOnlyList<WorkEntry> Hours(Vehicle vehicle) => store.Look(record => WorkReader.Of(record, vehicle));

    /// <summary>The time sheet of one job, the latest first.</summary>
    public IReadOnlyList<WorkEntry> Hours(Job job) => store.Look(record => WorkReader.Of(record, job));

    /// <summary>Work given out for a vehicle: what is away first, by its promised day.</summary>
    public IReadOnlyList<OutsideWork> OutsideWork(Vehicle vehicle) => store.Look(record => OutsideWorkReader.Of(record, vehicle));
}
