using BuildLog.Gearing.Drivelines;

namespace BuildLog.Gearing.Checks;

/// <summary>A check that stays silent until somebody has looked at its matter; <see cref="NotLookedAtCheck"/> names those nobody has.</summary>
internal interface ILookedAt
{
    /// <summary>What to look at, where the parts are fitted and nobody has.</summary>
    IEnumerable<Unlooked> NotLookedAt(Driveline driveline);
}

/// <summary>Something nobody has looked at yet.</summary>
/// <param name="Part">On which part; null for the vehicle as a whole.</param>
/// <param name="Thing">What of it, such as <c>bell-housing pattern</c>.</param>
/// <param name="Way">The cheapest way to know it.</param>
internal sealed record Unlooked(Position? Part, string Thing, string Way)
{
    /// <summary>A rating that stands on a plate, or nowhere on the part.</summary>
    public static Unlooked Rating(Position part, string thing) => new(part, thing, Spoken("from its maker's data sheet or plate"));

    /// <summary>Whose it is, as a sentence names it.</summary>
    public string Whose => Part?.InWords() ?? Spoken("vehicle");
}
