using System.Diagnostics.CodeAnalysis;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Drivelines;

/// <summary>Refuses numbers that no part can have, however they came here; what is only unusual is a finding.</summary>
internal static class Possible
{
    /// <param name="known">Null where nobody knows it.</param>
    /// <param name="what">What it is, with its article.</param>
    /// <param name="example">One that can be.</param>
    /// <exception cref="RefusedException">Nothing or less.</exception>
    [return: NotNullIfNotNull(nameof(known))]
    public static Known? AboveZero(this Known? known, string what, string example)
        => known is null or { Value.Value: > 0 } ? known : throw new RefusedException("out-of-range", Spoken($"{what} is more than 0, not {known.Value.Value:G6}."), example);

    /// <param name="known">Null where nobody knows it.</param>
    /// <param name="what">What it is, with its article.</param>
    /// <param name="example">One that can be.</param>
    /// <param name="most">The largest that can be.</param>
    /// <exception cref="RefusedException">Nothing, less, or more than there is.</exception>
    [return: NotNullIfNotNull(nameof(known))]
    public static Known? AboveZero(this Known? known, string what, string example, double most)
    {
        _ = known?.Value.Value.AboveZero(what, example, most);
        return known;
    }

    /// <inheritdoc cref="AboveZero(Known?, string, string)"/>
    public static Measured AboveZero(this Measured value, string what, string example)
        => value.Value > 0 ? value : throw new RefusedException("out-of-range", Spoken($"{what} is more than 0, not {value.Value:G6}."), example);

    /// <param name="known">Null where nobody knows it; zero is a number like another here.</param>
    /// <param name="what">What it is, with its article.</param>
    /// <param name="example">One that can be.</param>
    /// <exception cref="RefusedException">Less than nothing.</exception>
    [return: NotNullIfNotNull(nameof(known))]
    public static Known? NotBelowZero(this Known? known, string what, string example)
    {
        _ = known?.Value.NotBelowZero(what, example);
        return known;
    }

    /// <param name="value">Zero is a number like another here.</param>
    /// <param name="what">What it is, with its article.</param>
    /// <param name="example">One that can be.</param>
    /// <exception cref="RefusedException">Less than nothing.</exception>
    public static Measured NotBelowZero(this Measured value, string what, string example)
        => value.Value >= 0 ? value : throw new RefusedException("out-of-range", Spoken($"{what} is 0 or more, not {value.Value:G6}."), example);

    /// <param name="value">A plain number; one that is none, or without end, is refused too.</param>
    /// <param name="what">What it is, with its article.</param>
    /// <param name="example">One that can be.</param>
    /// <exception cref="RefusedException">Less than nothing.</exception>
    public static double NotBelowZero(this double value, string what, string example)
        => value is >= 0 and <= double.MaxValue ? value : throw new RefusedException("out-of-range", Spoken($"{what} is 0 or more, not {value:G6}."), example);

    /// <param name="value">A plain number; one that is none is refused too.</param>
    /// <param name="what">What it is, with its article.</param>
    /// <param name="example">One that can be.</param>
    /// <param name="most">The largest that can be.</param>
    /// <exception cref="RefusedException">Nothing, less, or more than there is.</exception>
    public static double AboveZero(this double value, string what, string example, double most = double.MaxValue)
        => value > 0 && value <= most ? value
            : throw new RefusedException("out-of-range", Spoken($"{what} is more than 0{(most < double.MaxValue ? Spoken($" and at most {most:G6}") : "")}, not {value:G6}."), example);

    /// <inheritdoc cref="AboveZero(double, string, string, double)"/>
    public static Typed AboveZero(this Typed typed, string what, string example, double most)
    {
        _ = typed.Value.AboveZero(what, example, most);
        return typed;
    }
}
