using BuildLog.Data.Components;
using BuildLog.Data.Days;
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

    /// <summary>The day it was fitted; where that is not known to the day, the one it is reckoned from.</summary>
    public DateOnly From { get; internal set; }

    /// <summary>When it was fitted, as typed.</summary>
    public LooseDay FromDay => FromAsTyped ?? LooseDay.On(From);

    /// <summary>Which of that day's changes it was, in the whole shop.</summary>
    public int FromOrder { get; internal set; }

    public OdometerReading? FromOdometer { get; internal set; }

    /// <summary>Why it was fitted.</summary>
    public string Reason { get; internal set; } = "";

    /// <summary>The day it came off; where that is not known to the day, the one it is reckoned from. Null while it is fitted.</summary>
    public DateOnly? To { get; internal set; }

    /// <summary>When it came off, as typed; null while it is fitted.</summary>
    public LooseDay? ToDay => ToAsTyped ?? LooseDay.OnIfAny(To);

    public int? ToOrder { get; internal set; }

    public OdometerReading? ToOdometer { get; internal set; }

    /// <summary>Why it came off.</summary>
    public string ReasonOff { get; internal set; } = "";

    /// <summary>Null where <see cref="From"/> says it all.</summary>
    internal LooseDay? FromAsTyped { get; set; }

    /// <summary>Null where <see cref="To"/> says it all.</summary>
    internal LooseDay? ToAsTyped { get; set; }

    internal Moment Start => new(From, FromOrder);

    internal Moment? End => To is { } to ? new(to, ToOrder ?? 0) : null;

    /// <summary>Fitted at the end of that day.</summary>
    public bool Holds(DateOnly day) => Holds(Moment.EndOf(day));

    public override string ToString() => Spoken($"as {Position.InWords()} from {FromDay.InWords}{(ToDay is { } to ? Spoken($" to {to.InWords}") : "")}");

    /// <summary><c>from spring 2024 to 1 June 2026</c>.</summary>
    internal string TimeInWords => ToDay is { } to ? Spoken($"from {FromDay.InWords} to {to.InWords}") : Spoken($"from {FromDay.InWords} on");

    internal bool Holds(Moment moment) => Start <= moment && !(End <= moment);
}
