namespace BuildLog.Data.Search;

/// <summary>What can be found of one record: everything that was typed into it, kept up to date with it.</summary>
internal sealed class Findable
{
    public long Id { get; private set; }

    public Guid RecordUid { get; private set; }

    public string Kind { get; private set; } = "";

    public long? VehicleId { get; private set; }

    public long? ComponentId { get; private set; }

    public DateOnly? Day { get; private set; }

    /// <summary>Null where the day is known.</summary>
    public string? DayAsTyped { get; private set; }

    public string Title { get; private set; } = "";

    /// <summary>The names of the vehicle and the part it speaks of.</summary>
    public string About { get; private set; } = "";

    public string Body { get; private set; } = "";
}
