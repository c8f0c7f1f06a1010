using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.RunningGear;

/// <summary>Which two studs a chord was measured between.</summary>
public enum Chord
{
    /// <summary>Next to each other: k = 1.</summary>
    Adjacent,

    /// <summary>With one stud between them; on four studs that is straight across.</summary>
    SkipOne,

    /// <summary>Straight across: even numbers of studs only.</summary>
    Across,
}

/// <summary>The pitch circle of the wheel studs, from the distance between two of them.</summary>
/// <remarks>
/// <code>PCD = s / sin(π k / N)</code>
/// <para>s chord between stud centres, m; N studs; k = 1 adjacent, 2 skip-one, N/2 across.</para>
/// <para>
/// Uncertainty: that of the chord, times the factor (5 studs: 1.70 adjacent, 1.05 skip-one, so measure skip-one). A chord taken from edge to the same
/// edge of the next hole is the chord; worn holes spoil it by tenths of a millimetre. Source: geometry.
/// </para>
/// </remarks>
public static class BoltCircle
{
    /// <summary>PCD, m: 0.05 to 0.4.</summary>
    /// <param name="chord">s, m.</param>
    /// <param name="studs">N: 3 to 10.</param>
    /// <param name="between">Which two studs it was measured between.</param>
    /// <exception cref="RefusedException">No such wheel, or no such chord on it.</exception>
    public static Measured FromChord(Measured chord, int studs, Chord between)
    {
        var circle = chord * Factor(studs, between);
        return circle.Value is >= 0.05 and <= 0.4
            ? circle
            : throw new RefusedException("chord", Spoken($"A chord of {chord.Value * 1000:0.#} mm makes a bolt circle of {circle.Value * 1000:0.#} mm; road wheels have 50 to 400 mm."), "67.2 mm");
    }

    /// <summary>PCD / s, one or more: by so much the chord's uncertainty grows.</summary>
    /// <param name="studs">N: 3 to 10.</param>
    /// <param name="between">Which two studs.</param>
    /// <exception cref="RefusedException">Fewer than 3 or more than 10 studs; one skipped on 3; straight across on an odd number.</exception>
    public static double Factor(int studs, Chord between)
    {
        _ = CheckedStuds(studs);
        if (between == Chord.SkipOne && studs < 4) throw new RefusedException("chord", Spoken("On three studs each stud is next to the others."), "adjacent");
        if (between == Chord.Across && studs % 2 != 0) throw new RefusedException("chord", Spoken($"On {studs} studs none stands straight across: measure adjacent or skip-one."), "skip-one");

        var steps = between switch { Chord.Adjacent => 1, Chord.SkipOne => 2, _ => studs / 2 };
        return 1 / Math.Sin(Math.PI * steps / studs);
    }

    internal static int? CheckedStuds(int? studs)
        => studs is null or (>= 3 and <= 10) ? studs : throw new RefusedException("studs", Spoken($"A wheel has 3 to 10 studs, not {studs}."), "5");
}
