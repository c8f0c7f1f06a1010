using BuildLog.Data.Days;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Deadlines;

/// <summary>A day by which something has to be done: retest, permit, insurance, certificate.</summary>
public sealed class Deadline : Entered
{
    /// <param name="vehicle">The vehicle it concerns; null for the shop.</param>
    public Deadline(Vehicle? vehicle = null) => VehicleId = vehicle?.Id;

    internal Deadline() { }

    public long? VehicleId { get; internal set; }

    public string What
    {
        get;
        set => field = value.Trim();
    } = "";

    public DateOnly Day { get; set; }

    /// <summary>Null while it is open.</summary>
    public DateOnly? Done
    {
        get;
        set => (field, DoneAsTyped) = (value, null);
    }

    /// <summary>The same as far as it is known: as it was typed.</summary>
    public LooseDay? DoneDay
    {
        get => DoneAsTyped ?? LooseDay.OnIfAny(Done);
        set => (Done, DoneAsTyped) = Reckoning.ReckonedIfAny(value, Done);
    }

    internal LooseDay? DoneAsTyped { get; set; }

    public override void Check()
    {
        TextRules.CheckTitle(What, new Later("deadline"), "test station, second look");
        TextRules.CheckDay(Day, new Later("day of the deadline"));
        TextRules.CheckDay(Done, new Later("day it was done"));
        if (Day == default) throw new RefusedException("day", Spoken($"By when is '{What}' due?"), "2026-05-03");
    }

    public override string ToString() => What;
}
