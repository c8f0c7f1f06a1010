namespace BuildLog.Gearing.Options;

/// <summary>What comes with one part into every combination that it is in.</summary>
/// <param name="Counts">Findings of it alone.</param>
/// <param name="IsUnlooked">Nobody has looked at something of it; of however many parts that holds, it is one finding.</param>
internal readonly record struct PartBrings(VerdictCounts Counts, bool IsUnlooked)
{
    /// <summary>Both together.</summary>
    public static PartBrings operator +(PartBrings left, PartBrings right) => new(left.Counts + right.Counts, left.IsUnlooked || right.IsUnlooked);
}

/// <summary>What vehicle and parts bring into every combination, as the checks say it that do not separate: see <see cref="OwnFindings"/>.</summary>
internal sealed record Brought(PartBrings Vehicle, PartBrings[] Gearboxes, PartBrings[] Overdrives, PartBrings[] Axles, PartBrings[] Tyres)
{
    /// <summary>Nothing is known to come with any of these.</summary>
    public static Brought Nothing(CandidateParts parts)
        => new(default, new PartBrings[parts.Gearboxes.Count], new PartBrings[parts.Overdrives.Count], new PartBrings[parts.Axles.Count], new PartBrings[parts.Tyres.Count]);

    /// <summary>With vehicle, gearbox, overdrive and axle, whatever the tyres are.</summary>
    public PartBrings Row(int gearbox, int overdrive, int axle) => Vehicle + Gearboxes[gearbox] + Overdrives[overdrive] + Axles[axle];

    /// <summary>With a whole combination.</summary>
    public VerdictCounts Of(Combination at)
    {
        var (counts, isUnlooked) = Row(at.Gearbox, at.Overdrive, at.Axle) + Tyres[at.Tyres];
        return isUnlooked ? counts with { Open = counts.Open + 1 } : counts;
    }
}
