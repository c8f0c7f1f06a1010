using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>A separate overdrive unit's ratio: from its teeth, or from the share it is sold by.</summary>
/// <remarks>
/// <code>from teeth: i = R / (R + S), carrier driving, sun held;   "25 % overdrive": i = 1 − 0.25 = 0.75</code>
/// <para>
/// Uncertainty: teeth none; a share half its last digit, as <see cref="QuotedRatio"/>. The trade names the drop of engine speed. Who names the gain of road
/// speed instead means 1 / (1 + share): 28 % is then 0.78, not 0.72. <see cref="Ask"/> asks.
/// </para>
/// <para>Source: <see cref="Planetary"/>; the naming is common practice, read in trade text.</para>
/// </remarks>
public static class OverdriveUnit
{
    /// <exception cref="RefusedException">A ratio that no overdrive has.</exception>
    public static double Of(Planetary planetary) => RatioRange.Overdrive.Checked(planetary.Overdriving);

    /// <summary>Reads <c>0.75</c> or <c>25 %</c>.</summary>
    public static Parsed<QuotedRatio> Read(string text)
        => text.TrimEnd().EndsWith('%')
            ? QuantityText.ReadPlain(text, Kind.Share).Then<QuotedRatio>(share => Named(share.Value, text))
            : QuotedRatio.Read(text, RatioRange.Overdrive) is { Refusal: not null } && (Reciprocal(text) ?? WithoutItsSign(text)) is { } meant ? meant : QuotedRatio.Read(text, RatioRange.Overdrive);

    // The gain of road speed is the ratio turned round.
    private static Refusal? Reciprocal(string text)
        => QuantityText.Read(text, Kind.Number).Understood(out var typed) && typed.Value > RatioRange.Overdrive.High && RatioRange.Overdrive.Accepts(1 / typed.Value)
            ? RatioRange.Overdrive.Refuse(typed.Value) with
            {
                Message = Spoken($"{Shown.Quoted(typed.Text)} slows down, and an overdrive speeds up. Was it written output over input?"),
                Example = Rounded.Fixed(1 / typed.Value, 2),
            }
            : null;

    // As it is sold, its sign of per cent left out.
    private static Refusal? WithoutItsSign(string text)
        => QuantityText.Read(text, Kind.Number).Understood(out var typed) && typed.Value > 1 && RatioRange.Overdrive.Accepts(1 - (typed.Value / 100))
            ? RatioRange.Overdrive.Refuse(typed.Value) with
            {
                Message = Spoken($"{Shown.Quoted(typed.Text)} is no overdrive ratio. Is it per cent? Then write the sign."),
                Example = $"{Rounded.Exact(typed.Value)} %",
            }
            : null;

    /// <summary>What else a share may mean.</summary>
    /// <param name="share">Such as 0.25.</param>
    public static RatioQuestion Ask(double share) => new(
        Spoken($"Is {share * 100:0.#} % the gain in road speed rather than the drop in engine speed?"),
        Spoken("an overdrive is sold by either"),
        1 / (1 + share));

    private static Parsed<QuotedRatio> Named(double share, string text)
    {
        var ratio = 1 - share;
        if (!RatioRange.Overdrive.Accepts(ratio)) return RatioRange.Overdrive.Refuse(ratio).In(text) with { Example = "25 %" };

        var digits = text.Replace(',', '.').TrimEnd(' ', '%');
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        return new QuotedRatio(ratio, 0.5 * Math.Pow(10, (point < 0 ? 0 : point + 1 - digits.Length) - 2), text.Trim());
    }
}
