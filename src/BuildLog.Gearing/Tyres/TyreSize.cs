using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Tyres;

/// <summary>What a tyre's marking says, and the dimensions that follow from it.</summary>
/// <remarks>
/// <code>D = d + 2 H,   H = S · a,   d = rim code · 25.4 mm;   C_free = π D;   C_rolling = k · C_free</code>
/// <para>S section width; a aspect ratio; d rim diameter; k loaded factor. D is the design dimension, not rounded.</para>
/// <para>Uncertainty: tyres of one marking differ; D has u = 1 % on top of the loaded factor's.</para>
/// <para>Not for: sizes without an aspect ratio, whose height stands in tables. Source: UN R30 and R54, par. 6.1.2.1.</para>
/// </remarks>
public sealed record TyreSize
{
    private const double LabelSpread = 0.01;

    public required string Designation { get; init; }

    /// <summary>Metres.</summary>
    public required double SectionWidth { get; init; }

    /// <summary>Section height over section width.</summary>
    public required double AspectRatio { get; init; }

    public required Construction Construction { get; init; }

    /// <summary>Metres.</summary>
    public required double RimDiameter { get; init; }

    public int? LoadIndex { get; init; }

    public int? LoadIndexDual { get; init; }

    public string? SpeedSymbol { get; init; }

    /// <summary>Tread worn off, in metres.</summary>
    public double Worn { get; init; }

    public double? LoadCapacityKg => LoadIndex is { } index ? Tyres.LoadIndex.CapacityKg(index) : null;

    public double? LoadCapacityDualKg => LoadIndexDual is { } index ? Tyres.LoadIndex.CapacityKg(index) : null;

    public int? SpeedLimitKmh => SpeedSymbol is { } symbol ? Tyres.SpeedSymbol.LimitKmh(symbol) : null;

    public RimWidth RimWidth => RimWidth.For(SectionWidth, AspectRatio);

    /// <summary>Overall diameter in metres; wear takes twice its depth off.</summary>
    public double OverallDiameter => RimDiameter + (2 * SectionWidth * AspectRatio) - (2 * Worn);

    public double FreeCircumference => Math.PI * OverallDiameter;

    /// <summary>Free circumference in metres, with what tyres of one marking differ by; ask once for each set of tyres and keep the answer.</summary>
    /// <remarks>Every call is another set: two sets of one size differ, and share the loaded factor's error alone.</remarks>
    public Measured FreeCircumferenceAsLabelled
    {
        get
        {
            var label = new Evidence($"tyre label {Designation}", _ => "roll the tyres out with the vehicle standing on them");
            return Measured.From(FreeCircumference, new Input("size from the label only", FreeCircumference * LabelSpread, label));
        }
    }

    /// <summary>Rolling circumference in metres, as well as a label can say it; like <see cref="FreeCircumferenceAsLabelled"/>, another set at every call.</summary>
    public Measured RollingCircumference => FreeCircumferenceAsLabelled * LoadedFactor.For(Construction);
}
