using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Propshafts;

/// <summary>The shaft speed at which a tube bends out and whips.</summary>
/// <remarks>
/// <code>n_c = B · √(D² + d²) / L²</code>
/// <para>n_c first bending critical speed, rev/s; D, d outer and inner diameter, m; L between joint centres, m; B = 1991.8 m/s for steel.</para>
/// <para>
/// B is the trade's 4.705·10⁶ rev/min · in. A hinged beam of steel, (π/8)·√(E/ρ), gives 1.3 % more, and aluminium is within 2 % of steel: the margin
/// of the working share, <see cref="WorkingShare"/>, is far wider. Uncertainty: twice that of the length. The limits of the
/// working share were made for this B, so beside them it is exact; <see cref="Alone"/> has it ± 2 %, rectangular, as far as beam and metals lie apart.
/// </para>
/// <para>
/// Not for: dents, soft centre bearings, heavy slip stubs and long yokes, which all lower it; tapered or composite tubes.
/// Source: trade constant from memory, beside the exact beam; a shaft maker's catalogue for the limits of validity. Two pieces: each by itself.
/// </para>
/// </remarks>
public static class CriticalSpeed
{
    /// <summary>m/s; 4.705·10⁶ rev/min · in.</summary>
    internal const double SteelTube = 4.705e6 / 60 * 0.0254;

    private static readonly Measured Constant = Measured.From(
        1, Input.Rectangular(new Later("constant of the tube's metal"), 0.02, new Evidence(new Later("tube constant"), _ => Spoken("ask the shaft's maker for its critical speed"))));

    /// <summary>n_c, rev/s, with B taken as exact: for a share of it.</summary>
    public static Measured Of(Tube tube)
    {
        var squares = (tube.Outer * tube.Outer) + (tube.Inner * tube.Inner);
        return SteelTube * squares.SquareRoot() / (tube.Length * tube.Length);
    }

    /// <summary>The same as it may be told by itself, revolutions per second: with the uncertainty of B.</summary>
    public static Measured Alone(Tube tube) => Of(tube) * Constant;

    /// <summary>The piece of the lowest n_c, which whips first; the foremost of equal ones.</summary>
    /// <exception cref="ArgumentException">No pieces at all.</exception>
    public static Tube Weakest(IEnumerable<Tube> pieces) => pieces.MinBy(piece => Of(piece).Value) ?? throw new ArgumentException("A shaft has pieces.", nameof(pieces));

    /// <summary>The longest such tube, metres, whose critical speed is <paramref name="wanted"/> rev/s.</summary>
    public static double LongestFor(Tube tube, double wanted)
        => Math.Sqrt(SteelTube * Math.Sqrt(Math.Pow(tube.Outer.Value, 2) + Math.Pow(tube.Inner.Value, 2)) / wanted.AboveZero(Spoken("A wanted critical speed, rev/s,"), "80"));

    /// <summary>The thinnest tube of the same wall and length, metres across, whose critical speed is <paramref name="wanted"/> rev/s.</summary>
    /// <remarks>With d = D − 2 · wall, D = wall + √((D² + d²)/2 − wall²).</remarks>
    public static double ThinnestFor(Tube tube, double wanted)
    {
        var (wall, s) = (tube.Wall.Value, wanted.AboveZero(Spoken("A wanted critical speed, rev/s,"), "80") * tube.Length.Value * tube.Length.Value / SteelTube);
        return wall + Math.Sqrt(Math.Max(0, (s * s / 2) - (wall * wall)));
    }
}
