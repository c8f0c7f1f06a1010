namespace BuildLog.Gearing.Options;

/// <summary>What an option is ranked by; less of each is better.</summary>
/// <param name="Clash">Findings that clash.</param>
/// <param name="Open">Findings that cannot be said.</param>
/// <param name="Watch">Findings to watch.</param>
/// <param name="Cost">In the smallest coin; infinite where it is not known.</param>
/// <param name="Changes">Parts changed; one that is not free counts a thousandth more.</param>
/// <param name="Distance">The furthest that a cruise lies from its goal, as a share of the engine speed wanted.</param>
public readonly record struct OptionScore(double Clash, double Open, double Watch, double Cost, double Changes, double Distance) : IComparable<OptionScore>
{
    /// <summary>The furthest that a cruise lies from its goal, as a share of the engine speed wanted.</summary>
    // Two ways to one ratio differ in the last bits; that is no shorter distance, and no reason for another part.
    public double Distance { get; init; } = Math.Round(Distance, 9);

    /// <summary>A combination's counts with what it costs and changes.</summary>
    internal static OptionScore Of(CandidateParts parts, string? currency, Combination at, VerdictCounts counts, double distance) => new(
        counts.Clash, counts.Open, counts.Watch,
        parts.Gearboxes[at.Gearbox].Cost(currency) + parts.Overdrives[at.Overdrive].Cost(currency) + parts.Axles[at.Axle].Cost(currency) + parts.Tyres[at.Tyres].Cost(currency),
        parts.Gearboxes[at.Gearbox].Changes + parts.Overdrives[at.Overdrive].Changes + parts.Axles[at.Axle].Changes + parts.Tyres[at.Tyres].Changes,
        distance);

    /// <summary>Clashes before what is open, that before what is to watch, as one number; a driveline has fewer than a thousand findings.</summary>
    internal double Verdicts => (((Clash * 1000) + Open) * 1000) + Watch;

    /// <summary>No worse in anything and better in something.</summary>
    public bool Dominates(in OptionScore other) => NoWorseThan(other) && this != other;

    /// <summary>Verdicts before money, money before work, work before distance; the better one comes first.</summary>
    public int CompareTo(OptionScore other)
    {
        var order = Clash.CompareTo(other.Clash);
        if (order == 0) order = Open.CompareTo(other.Open);
        if (order == 0) order = Watch.CompareTo(other.Watch);
        if (order == 0) order = Cost.CompareTo(other.Cost);
        if (order == 0) order = Changes.CompareTo(other.Changes);
        return order == 0 ? Distance.CompareTo(other.Distance) : order;
    }

    /// <summary>Comes before.</summary>
    public static bool operator <(OptionScore left, OptionScore right) => left.CompareTo(right) < 0;

    /// <summary>Comes after.</summary>
    public static bool operator >(OptionScore left, OptionScore right) => left.CompareTo(right) > 0;

    /// <summary>Does not come after.</summary>
    public static bool operator <=(OptionScore left, OptionScore right) => left.CompareTo(right) <= 0;

    /// <summary>Does not come before.</summary>
    public static bool operator >=(OptionScore left, OptionScore right) => left.CompareTo(right) >= 0;

    private bool NoWorseThan(in OptionScore other)
        => Clash <= other.Clash && Open <= other.Open && Watch <= other.Watch && Cost <= other.Cost && Changes <= other.Changes && Distance <= other.Distance;
}
