using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>What a ratio of each kind of part can be; outside it is a slip of the pen or of the count.</summary>
/// <remarks>Wide on purpose: light vehicles' axles lie between 2.2 and 7.2 (common practice, no source), hub reduction and trucks beyond.</remarks>
public sealed record RatioRange(Later Part, double Low, double High, string Example)
{
    /// <summary>Propshaft turns per wheel turn, a hub reduction inside.</summary>
    public static readonly RatioRange Axle = new(new Later("axle"), 1.5, 12, "4.10");

    /// <summary>From a long overdrive to a crawler gear.</summary>
    public static readonly RatioRange Gear = new(new Later("gear"), 0.3, 20, "0.82");

    /// <summary>Of an overdrive unit, engaged; 1 is direct.</summary>
    public static readonly RatioRange Overdrive = new(new Later("overdrive"), 0.4, 1, "0.78");

    /// <summary>Of a transfer case, in high or low.</summary>
    public static readonly RatioRange Transfer = new(new Later("transfer case"), 0.5, 6, "1.00");

    /// <summary>Of a reduction in the hubs; 1 is none.</summary>
    public static readonly RatioRange Hub = new(new Later("hub reduction"), 1, 6, "1.00");

    /// <summary>Low over high of a two-speed axle.</summary>
    public static readonly RatioRange AxleStep = new(new Later("two-speed axle's low over high"), 1.05, 2.5, "1.39");

    // A ± is typed as that of 95 %, so its standard uncertainty is half of it.
    private const double MostUncertain = 0.25;

    /// <exception cref="RefusedException">The ratio is outside the range.</exception>
    public double Checked(double ratio) => Accepts(ratio) ? ratio : throw new RefusedException(Refuse(ratio));

    /// <summary>Reads a ratio, a fraction or one with its ±; outside the range, and what is no number, is refused.</summary>
    public Parsed<Typed> Read(string text) => Number(text).Then<Typed>(typed => !Accepts(typed.Value) ? Refuse(Shown.Quoted(text))
        : typed.StandardUncertainty > MostUncertain * typed.Value ? new Refusal("uncertainty", Spoken($"{Shown.Quoted(text)} says nothing: its ± is more than half of the ratio."), FormattableString.Invariant($"{Example} ± 0.01"))
        : typed);

    /// <summary>Says that no such part has the ratio, and what it can be.</summary>
    public Refusal Refuse(double ratio)
        => Refuse(Spoken($"A ratio of {ratio:G6}"));

    private Refusal Refuse(string what) => new("out-of-range", Spoken($"{what} is no {Part} ratio: it lies between {Low} and {High}."), Example);

    // The example of any number is an axle's.
    private Parsed<Typed> Number(string text)
        => QuantityText.Read(text, Kind.Number) is { Refusal: { } refusal } && refusal.Example == Kind.Number.Example()
            ? refusal with { Example = Example }
            : QuantityText.Read(text, Kind.Number);

    // Written so that NaN is refused too.
    internal bool Accepts(double ratio) => ratio >= Low && ratio <= High;
}
