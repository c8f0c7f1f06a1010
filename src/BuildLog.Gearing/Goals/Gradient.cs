using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Goals;

/// <summary>A gradient as the road sign has it: rise over run, in per cent.</summary>
internal static class Gradient
{
    private const double Steepest = 1.0;

    public static Parsed<Typed> Read(string text)
        => QuantityText.ReadPlain(text, Kind.Share, Units.PercentUnit).Then<Typed>(typed => typed.Value is > 0 and <= Steepest
            ? typed
            : new Refusal("out-of-range", Spoken($"{Shown.Quoted(typed.Text)} is no hill to want: more than 0, at most 100 %."), "6 %"));
}
