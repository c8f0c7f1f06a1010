using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>What a tag says of a ratio beside what was counted.</summary>
/// <remarks>
/// <code>they agree if |i_counted − i_tag| ≤ t₀.₉₇₅ · u(i_counted − i_tag)</code>
/// <para>
/// t of the count's degrees of freedom. A hub reduction that stands in both is shared and cancels in part. Tags stay on when gears are changed, so where
/// they part the count holds.
/// </para>
/// <para>Source: JCGM 100:2008, G.3; the rank of the evidence is common practice.</para>
/// </remarks>
public sealed record TagAgainstCount(Known Tag, Known Counted)
{
    /// <summary>i_counted − i_tag; what both share cancels.</summary>
    public Measured Difference => Counted.Value - Tag.Value;

    /// <summary>Both can be true: the difference's 95 % interval holds zero.</summary>
    public bool Agrees => Math.Abs(Difference.Value) <= (Counted.Value.CoverageFactor * Difference.StandardUncertainty) + 1e-12;

    /// <summary>Such as <c>The tag's 3.90 does not agree with 4.74 ± 0.04 (measured).</c></summary>
    public string Says
        => Spoken($"The {What} {(Tag.Says.Length > 0 ? AsWritten.Numbers(Tag.Says) : Rounded.Value(Tag.Value, Units.One))} {(Agrees ? Spoken("agrees") : Spoken("does not agree"))} "
            + $"with {Rounded.WithInterval(Counted.Value, Units.One)} ({Counted.Source.InWords()}).");

    private string What => Tag.Source switch
    {
        Source.Tag => Spoken("tag's"),
        Source.MakersData => Spoken("maker's"),
        Source.OwnersWord => Spoken("claimed"), // by an owner or a seller
        _ => Spoken("earlier"),
    };
}
