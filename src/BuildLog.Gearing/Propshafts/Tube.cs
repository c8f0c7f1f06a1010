using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Propshafts;

/// <summary>A round steel tube between two joint centres.</summary>
public sealed record Tube
{
    private const double Thickest = 0.3;
    private const double Longest = 4;

    /// <param name="outer">Outer diameter, metres.</param>
    /// <param name="wall">Wall thickness, metres.</param>
    /// <param name="length">Joint centre to joint centre, or to the centre bearing, metres.</param>
    /// <exception cref="RefusedException">A tube that cannot be.</exception>
    public Tube(Measured outer, Measured wall, Measured length)
    {
        if (outer.Value is not (> 0 and <= Thickest))
            throw new RefusedException("tube", Spoken($"A propshaft tube is up to 300 mm thick, not {outer.Value * 1000:0.#} mm."), "76 mm");
        if (TooThick(outer.Value, wall.Value) is { } refusal) throw new RefusedException(refusal);
        if (length.Value is not (> 0 and <= Longest))
            throw new RefusedException("length", Spoken($"A propshaft is up to 4 m between joint centres, not {length.Value:0.###} m."), "1.30 m");
        (Outer, Wall, Length) = (outer, wall, length);
    }

    /// <summary>Why a tube cannot have such a wall; null where it can.</summary>
    /// <param name="outer">Outer diameter, metres.</param>
    /// <param name="wall">Wall thickness, metres.</param>
    public static Refusal? TooThick(double outer, double wall) => wall is not > 0 || wall > outer / 2
        ? new("wall", Spoken($"The wall of a {outer * 1000:0.#} mm tube is more than 0 and at most half of that, not {wall * 1000:0.#} mm."), "2.1 mm")
        : null;

    /// <summary>D, metres.</summary>
    public Measured Outer { get; }

    /// <summary>Wall thickness, metres.</summary>
    public Measured Wall { get; }

    /// <summary>L, metres.</summary>
    public Measured Length { get; }

    /// <summary>d = D − 2 · wall, metres.</summary>
    public Measured Inner => Outer - (2 * Wall);
}
