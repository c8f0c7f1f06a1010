using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;

namespace BuildLog.Data.Fitments;

/// <summary>A component on a vehicle, from a day up to, but not including, the day it came off.</summary>
public sealed class Fitment : Kept
{
    public long ComponentId { get; internal set; }

    public long VehicleId { get; internal set; }

    /// <summary>Loaded with the fitment.</summary>
    public Component Component { get; internal set; } = null!;

    /// <summary>Loaded with the fitment.</summary>
    public Vehicle Vehicle { get; internal set; } = null!;

    public Position Position { get; internal set; }

    public DateOnly From { get; internal set; }

    /// <summary>Which of that day's changes it was, in the whole shop.</summary>
    public int FromOrder { get; internal set; }

    public OdometerReading? FromOdometer { get; internal set; }

    /// <summary>Why it was fitted.</summary>
    public string Reason { get; internal set; } = "";

    /// <summary>Null while it is fitted.</summary>
    public DateOnly? To { get; internal set; }

    public int? ToOrder { get; internal set; }

    public OdometerReading? ToOdometer { get; internal set; }

    /// <summary>Why it came off.</summary>
    public string ReasonOff { get; internal set; } = "";

    internal Moment Start => new(From, FromOrder);

    internal Moment? End => To is { } to ? new(to, ToOrder ?? 0) : null;

    /// <summary>Fitted at the end of that day.</summary>
    public bool Holds(DateOnly day) => Holds(Moment.EndOf(day));

    public override string ToString() => $"as {Position.InWords()} from {From.InWords()}{(To is { } to ? $" to {to.InWords()}" : "")}";

    internal bool Holds(Moment moment) => Start <= moment && !(End <= moment);
}
