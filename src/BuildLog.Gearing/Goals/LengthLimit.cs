using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Goals;

/// <summary>The most that a length of the running gear may be: tyre diameter, tyre width or track.</summary>
/// <param name="Most">As typed; base unit metres.</param>
public sealed record LengthLimit(Typed Most)
{
    /// <param name="text">Such as <c>31 in</c> or <c>790 mm</c>.</param>
    public static Parsed<LengthLimit> ReadTyreDiameter(string text) => Read(text, 0.3, 2.5, Spoken("tyre diameter"), "790 mm");

    /// <param name="text">Such as <c>225 mm</c>.</param>
    public static Parsed<LengthLimit> ReadTyreWidth(string text) => Read(text, 0.08, 0.8, Spoken("tyre width"), "225 mm");

    /// <param name="text">Such as <c>1450 mm</c>, tyre middle to tyre middle.</param>
    public static Parsed<LengthLimit> ReadTrack(string text) => Read(text, 0.6, 3, Spoken("track"), "1450 mm");

    private static Parsed<LengthLimit> Read(string text, double smallest, double largest, string what, string right)
    {
        var length = QuantityText.ReadPlain(text, Kind.Length);
        if (length.Refusal is { } refusal) return refusal with { Example = right };

        return length.Then<LengthLimit>(typed => typed.Value >= smallest && typed.Value <= largest
            ? new LengthLimit(typed)
            : new Refusal("out-of-range", Spoken($"{Shown.Quoted(typed.Text)} is no {what}: {smallest * 1000:0} to {largest * 1000:0} mm."), right));
    }
}
