using BuildLog.Gearing.Drivelines;

namespace BuildLog.Data.Fitments;

/// <summary>What was entered of a fitment, for correcting it: days and texts as they were typed.</summary>
public sealed class FitmentFacts
{
    internal FitmentFacts(Fitment fitment)
    {
        (Position, From, Odometer, Reason) = (fitment.Position, fitment.From, fitment.FromOdometer?.InWords ?? "", fitment.Reason);
        (To, OdometerOff, ReasonOff) = (fitment.To, fitment.ToOdometer?.InWords ?? "", fitment.ReasonOff);
    }

    public Position Position { get; set; }

    public DateOnly From { get; set; }

    /// <summary>As typed, in the vehicle's unit if bare; empty if it was not read.</summary>
    public string Odometer { get; set; }

    public string Reason { get; set; }

    /// <summary>Null while it is fitted.</summary>
    public DateOnly? To { get; set; }

    public string OdometerOff { get; set; }

    public string ReasonOff { get; set; }
}
