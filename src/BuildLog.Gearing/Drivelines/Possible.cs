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
        => known is null or { Value.Value: > 0 } ? known : throw new RefusedException("out-of-range", FormattableString.Invariant($"{what} is more than 0, not {known.Value.Value:G6}."), example);
}
