using BuildLog.Data.Days;
using BuildLog.Gearing.Drivelines;

namespace BuildLog.Data.Fitments;

/// <summary>What was entered of a fitment, for correcting it: days and texts as they were typed.</summary>
public sealed class FitmentFacts
{
    internal FitmentFacts(Fitment fitment)
    {
        (Position, From, FromAsTyped, Odometer, Reason) = (fitment.Position, fitment.From, fitment.FromAsTyped, fitment.FromOdometer?.InWords ?? "", fitment.Reason);
        (To, ToAsTyped, OdometerOff, ReasonOff) = (fitment.To, fitment.ToAsTyped, fitment.ToOdometer?.InWords ?? "", fitment.ReasonOff);
    }

    public Position Position { get; set; }

    /// <summary>A day that is known.</summary>
    public DateOnly From
    {
        get;
        set => (field, FromAsTyped) = (value, null);
    }

    /// <summary>A day as far as it is known.</summary>
    public LooseDay FromDay
    {
        get => FromAsTyped ?? LooseDay.On(From);
        set => (From, FromAsTyped) = Reckoning.Reckoned(value, From);
    }

    /// <summary>As typed, in the vehicle's unit if bare; empty if it was not read.</summary>
    public string Odometer { get; set; }

    public string Reason { get; set; }

    /// <summary>Null while it is fitted.</summary>
    public DateOnly? To
    {
        get;
        set => (field, ToAsTyped) = (value, null);
    }

    /// <summary>The same as far as it is known.</summary>
    public LooseDay? ToDay
    {
        get => ToAsTyped ?? LooseDay.OnIfAny(To);
        set => (To, ToAsTyped) = Reckoning.ReckonedIfAny(value, To);
    }

    public string OdometerOff { get; set; }

    public string ReasonOff { get; set; }

    internal LooseDay? FromAsTyped { get; private set; }

    internal LooseDay? ToAsTyped { get; private set; }
}
