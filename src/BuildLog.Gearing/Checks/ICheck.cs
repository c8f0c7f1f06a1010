using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Checks;

/// <summary>One matter of the marriage, judged. One check is one file; <see cref="AllChecks"/> names it.</summary>
public interface ICheck
{
    /// <summary>Lower-case, stable: JSON, help pages and tests go by it.</summary>
    string Id { get; }

    /// <summary>The trade's name of the matter.</summary>
    string Title { get; }

    /// <summary>Judges a driveline; empty where no goal and no part concerns the matter, open where a number is missing. It never throws for want of one.</summary>
    IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals);
}
