using BuildLog.Data.Components;
using BuildLog.Data.Sessions;

namespace BuildLog.Data.Hunting;

/// <summary>What comes back from the yard for a wanted part: the part that was looked at, and what was counted on it, a session for each gear of a gearbox.</summary>
/// <param name="Wanted">The part that is hunted.</param>
/// <param name="Part">The one that was looked at, new or counted before.</param>
/// <param name="Sessions">The sessions on it, filled in.</param>
public sealed record YardFind(WantedPart Wanted, Component Part, IReadOnlyList<Func<Component, Session>> Sessions);
