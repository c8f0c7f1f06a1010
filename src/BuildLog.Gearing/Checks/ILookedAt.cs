using BuildLog.Gearing.Drivelines;

namespace BuildLog.Gearing.Checks;

/// <summary>A check that stays silent until somebody has looked at its matter; <see cref="NotLookedAtCheck"/> names those nobody has.</summary>
internal interface ILookedAt
{
    /// <summary>What to look at on which part, where the parts are fitted and nobody has.</summary>
    IEnumerable<(Position Part, string Thing)> NotLookedAt(Driveline driveline);
}
