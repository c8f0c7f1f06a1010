using System.Runtime.CompilerServices;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres;

/// <summary>What a tyre's marking says, and the dimensions that follow from it.</summary>
/// <remarks>
/// <code>D = D_new − 2 · wear;   C_free = π D;   C_rolling = k · C_free</code>
/// <para>D_new design diameter, by the notation's formula or table; k loaded factor.</para>
/// <para>Uncertainty: tyres of one marking differ; D has the notation's spread, 1 % at least, on top of the loaded factor's.</para>
/// <para>Source: each notation and table names its own.</para>
/// </remarks>
/// <exception cref="RefusedException">A length that no road tyre has.</exception>
public sealed record TyreSize
{
    private const double LeastSpread = 0.01;

    // Beside the record, not in it: two readings of one marking are equal, and still two sets of tyres.
    private static readonly ConditionalWeakTable<TyreSize, Measured> LabelErrors = [];

    /// <summary>The marking as it is written, such as <c>205/65R15</c>.</summary>
    public required string Designation { get; init; }

    /// <summary><c>metric</c>, <c>flotation</c>, <c>numeric</c> or <c>alpha-numeric</c>.</summary>
    public required string Notation { get; init; }

    /// <summary>S, metres: 0.03 to 1, anything else is refused.</summary>
    public required double SectionWidth { get; init => field = Within(value, 0.03, 1, Spoken("section width")); }

    /// <summary>Section height over section width; null where the marking does not carry it.</summary>
    public double? AspectRatio { get; init => field = value?.AboveZero(Spoken("An aspect ratio"), "0.65"); }

    /// <summary>How its cords lie.</summary>
    public required Construction Construction { get; init; }

    /// <summary>Not a passenger tyre: LT, C, and the sizes that are only made for vans and trucks.</summary>
    public bool IsCommercial { get; init; }

    /// <summary>d, where the beads sit, metres: 0.1 to 1.5, anything else is refused.</summary>
    public required double RimDiameter { get; init => field = Within(value, 0.1, 1.5, Spoken("rim diameter")); }

    /// <summary>The new tyre's diameter and where it comes from.</summary>
    public required Dimensions Dimensions { get; init; }

    /// <summary>What rims it may sit on.</summary>
    public required RimWidth RimWidth { get; init; }

    /// <summary>Load index of a single tyre; null where the marking has none.</summary>
    public int? LoadIndex { get; init; }

    /// <summary>Load index on twin wheels.</summary>
    public int? LoadIndexDual { get; init; }

    /// <summary>Such as <c>H</c>, or <c>(Y)</c> where it stands in brackets; null where the marking has none.</summary>
    public string? SpeedSymbol { get; init; }

    /// <summary>Km/h, where the marking only says that it is made for more: VR 210, ZR 240, a symbol in brackets its own; null where it says how much, or nothing.</summary>
    public int? SpeedAboveKmh { get; init; }

    /// <summary>Tread worn off, metres: 0 to 0.05, anything else is refused.</summary>
    public double Worn { get; init => field = Within(value, 0, 0.05, Spoken("wear")); }

    /// <summary>What one tyre carries, kilograms.</summary>
    public double? LoadCapacityKg => LoadIndex is { } index ? Tyres.LoadIndex.CapacityKg(index) : null;

    /// <summary>What one of twin tyres carries, kilograms.</summary>
    public double? LoadCapacityDualKg => LoadIndexDual is { } index ? Tyres.LoadIndex.CapacityKg(index) : null;

    /// <summary>The fastest it is made for, km/h; null where the marking does not say, or only more than <see cref="SpeedAboveKmh"/>.</summary>
    public int? SpeedLimitKmh => SpeedSymbol is { } symbol ? Tyres.SpeedSymbol.LimitKmh(symbol) : null;

    /// <summary>Overall diameter in metres; wear takes twice its depth off.</summary>
    public double OverallDiameter => Dimensions.Diameter - (2 * Worn);

    /// <summary>π times the free diameter, metres, without uncertainty.</summary>
    public double FreeCircumference => Math.PI * OverallDiameter;

    /// <summary>Free circumference in metres, with what tyres of one marking differ by.</summary>
    /// <remarks>This set's error, however often it is asked for; two sets of one size differ, and share the loaded factor's error alone.</remarks>
    public Measured FreeCircumferenceAsLabelled => LabelErrors.GetValue(this, Labelled);

    /// <summary>Rolling circumference in metres, as well as a label can say it.</summary>
    public Measured RollingCircumference => FreeCircumferenceAsLabelled * LoadedFactor.For(Construction);

    /// <summary>Metres a turn of some other tyre, as well as its label could say it; see <see cref="RollingCircumference"/>.</summary>
    /// <param name="length">Metres.</param>
    /// <param name="alike">Of whose notation and build it is; null for a radial of the common notations.</param>
    public static Measured RollingAsLabelled(double length, TyreSize? alike)
    {
        if (alike is not null) return alike.RollingCircumference * (length / alike.RollingCircumference.Value);

        var loaded = LoadedFactor.For(Construction.Radial);
        return Labelled(length / loaded.Value, LeastSpread, Spoken("tyre label")) * loaded;
    }

    private static Measured Labelled(TyreSize size) => Labelled(size.FreeCircumference, size.Dimensions.Spread, Spoken($"tyre label {size.Designation}"));

    private static Measured Labelled(double free, double spread, string label)
        => Measured.From(free, new Input(Spoken("size from the label only"), free * spread, new Evidence(label, _ => Spoken("roll the tyres out with the vehicle standing on them"))));

    private static double Within(double value, double low, double high, string what) => value >= low && value <= high
        ? value
        : throw new RefusedException("out-of-range", Spoken($"A tyre's {what} is {low * 1000:0} to {high * 1000:0} mm, not {value * 1000:0.###} mm."), "205/70R15");
}
