using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Data.Plans;

/// <summary>What a vehicle is judged by while something else is tried: its driveline with what it has to move, and what is wanted of it.</summary>
public sealed record Trial(Driveline Driveline, OwnersGoals Goals)
{
    /// <summary>A vehicle of which nothing is known.</summary>
    public static readonly Trial OfNothing = new(new(), OwnersGoals.None);
}
