using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>Usual rolling resistance of a kind of tyre on the road, or of the ground under it.</summary>
/// <param name="InWords">As the trade says it.</param>
/// <param name="Low">Lowest usual.</param>
/// <param name="High">Highest usual.</param>
/// <remarks>
/// Source: tyres from memory, inside 0.010 to 0.020 of Walter and Conant, Tire Sci. Technol. 2 (1974) but for the coarse ones; ground from a mechanical
/// engineer's data handbook (1993), quoted second-hand, whose single figures are given ± 10 % here.
/// </remarks>
public sealed record RollingClass(Later InWords, double Low, double High)
{
    /// <summary>What the record calls it, in any language.</summary>
    public string Name => InWords.Text;

    /// <summary>The kinds to choose from.</summary>
    public static readonly IReadOnlyList<RollingClass> All =
    [
        new(new Later("modern radial"), 0.009, 0.013),
        new(new Later("radial, 1970–89"), 0.012, 0.016),
        new(new Later("bias ply"), 0.016, 0.022),
        new(new Later("mud tread at road pressure"), 0.018, 0.028),
        new(new Later("loose gravel"), 0.036, 0.044),
        new(new Later("medium hard soil"), 0.072, 0.088),
        new(new Later("sand"), 0.1, 0.2),
    ];

    /// <summary>A coefficient of this class; ask once for each set of tyres and keep the answer.</summary>
    public Known Coefficient()
    {
        var evidence = new Evidence(Spoken($"rolling resistance of {InWords}"), _ => Spoken("coast down on a level road and enter the rolling resistance"));
        return new(Measured.From((Low + High) / 2, Input.Rectangular(Spoken("rolling resistance"), (High - Low) / 2, evidence)), Source.Assumed, InWords);
    }
}
