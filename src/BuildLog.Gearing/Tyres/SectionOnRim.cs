using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres;

/// <summary>How wide a tyre stands on another rim than it was measured on.</summary>
/// <remarks>
/// <code>S = S₁ + 0.4 (A − A₁)</code>
/// <para>S section width on the rim of width A; S₁ the marked one, on the measuring rim A₁. The diameter of a radial hardly changes.</para>
/// <para>
/// Uncertainty: makers allow 4 % on S₁ (TRA and UN R30, second-hand), more than the rule itself errs. Not for: rims outside the permitted ones.
/// Source: UN R30 par. 6.1.1.1 (read in part); a retailer's rule of 0.2 in for each half inch of rim is the same.
/// </para>
/// </remarks>
public static class SectionOnRim
{
    private const double PerRim = 0.4;

    /// <param name="size">The tyre.</param>
    /// <param name="rimWidth">Between the flanges, metres.</param>
    /// <returns>Section width, metres.</returns>
    /// <exception cref="RefusedException">A width that no road wheel has.</exception>
    public static double Of(TyreSize size, double rimWidth)
        => rimWidth is >= 0.07 and <= 0.41
            ? size.SectionWidth + (PerRim * (rimWidth - (size.RimWidth.Measuring * 0.0254)))
            : throw new RefusedException("rim-width", FormattableString.Invariant($"A rim {rimWidth / 0.0254:0.##} in wide is no road wheel's: 3 to 16 in."), "6.5 in");
}
