using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Checks;

/// <summary>A vehicle that stands on front tyres has rear ones too.</summary>
/// <remarks>
/// Open while only a set of the front wheels is fitted: no speed, load or limit can be judged for the other axle, and nothing here guesses that the tyres there
/// are the same. A matter of entry, so there is no limit.
/// </remarks>
internal sealed class RearTyresCheck : ICheck
{
    public string Id => "rear-tyres";

    public string Title => Spoken("Rear tyres");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => driveline is { Tyres: null, LoneFrontTyres: { } front }
            ? [this.Open([Position.Tyres, Position.FrontTyres], Spoken($"What the vehicle does on {front.Name}"), [Missing.RearTyres], Spoken("what is fitted"))]
            : [];
}
