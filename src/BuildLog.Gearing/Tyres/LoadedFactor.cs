using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Tyres;

/// <summary>How the tyre's cords lie.</summary>
public enum Construction
{
    /// <summary>Cords straight across, from bead to bead.</summary>
    Radial,
    /// <summary>Cords crossed at an angle.</summary>
    Bias,
}

/// <summary>What part of its free circumference a tyre covers in a turn when it carries the vehicle.</summary>
/// <remarks>
/// <code>C_rolling = k · C_free;   radial k = 0.971 (u 0.010), bias k = 0.952 (u 0.015)</code>
/// <para>
/// One shared error for all tyres of a construction in one computation: comparing two radials does not count it twice.
/// </para>
/// <para>
/// Source: European Commission heavy-duty CO2 declaration data give C = 3.05 D on 15° rims, 3.05/π = 0.971; two published passenger tyres give the
/// same. The bias figure, 2.99/π, is from memory.
/// </para>
/// </remarks>
public static class LoadedFactor
{
    private static readonly Evidence Unloaded = new(new Later("loaded factor"), _ => Spoken("roll the tyres out with the vehicle standing on them"));

    private static readonly Measured Radial = Measured.From(0.971, new Input(new Later("loaded factor, radial tyre"), 0.010, Unloaded));

    private static readonly Measured Bias = Measured.From(0.952, new Input(new Later("loaded factor, bias tyre"), 0.015, Unloaded));

    /// <summary>k of a construction, with the error all its tyres share.</summary>
    public static Measured For(Construction construction) => construction == Construction.Radial ? Radial : Bias;
}
