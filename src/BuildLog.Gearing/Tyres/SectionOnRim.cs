using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres;

/// <summary>How wide a tyre stands on another rim than it was measured on.</summary>
/// <remarks>
/// <code>S = S₁ + 0.4 (A − A₁)</code>
/// <para>S section width on the rim of width A; S₁ the marked one, on the measuring rim A₁. The diameter of a radial hardly changes.</para>
/// <para>
/// Uncertainty: up to 4 % over the marked width is permitted (TRA and UN R30, second-hand), so u(S₁) is 2 %, more than the rule itself errs. Not for: rims
/// outside the permitted ones. Source: UN R30 par. 6.1.1.1 (read in part); a retailer's rule of 0.2 in for each half inch of rim is the same.
/// </para>
/// </remarks>
public static class SectionOnRim
{
    private const double PerRim = 0.4;
    private const double Spread = 0.02;

    /// <summary>Metres, on the measuring rim.</summary>
    public static Measured Marked(TyreSize size) => Measured.From(
        size.SectionWidth,
        new Input(Spoken("section width from the label only"), size.SectionWidth * Spread, new Evidence(Spoken($"tyre label {size.Designation}"), _ => Spoken("measure the mounted tyre across its side walls"))));

    /// <param name="size">The tyre.</param>
    /// <param name="rimWidth">Between the flanges, metres.</param>
    /// <returns>Section width, metres.</returns>
    /// <exception cref="RefusedException">A width that no wheel has.</exception>
    public static Measured Of(TyreSize size, Measured rimWidth)
        => rimWidth.Value is >= 0.05 and <= 0.6
            ? Marked(size) + (PerRim * (rimWidth - Units.Inch.ToBase(size.RimWidth.Measuring)))
            : throw new RefusedException("rim-width", Spoken($"A rim {rimWidth.Value / 0.0254:0.##} in wide is no wheel's: 2 to 23 in."), "6.5 in");
}
