using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Commands;

/// <summary>A count as an argument: there a comma separates values, so its decimals use the point. In a form, where nothing has to be separated, it is a decimal mark.</summary>
internal static class TypedCount
{
    public static Parsed<TurnReading> OfAxle(string text, Wheels wheels)
        => text[(text.IndexOf(':', StringComparison.Ordinal) + 1)..].Contains(',', StringComparison.Ordinal)
            ? new Refusal("turns", Spoken($"{Shown.Quoted(text)}: in a count the comma parts the two wheels; decimals use the point."), CountedEnds.Axle.Example)
            : TurnReading.Read(text, wheels);

    // One output: no comma has anything to part.
    public static Parsed<TurnReading> OfGear(string text)
        => text.Contains(',', StringComparison.Ordinal)
            ? new Refusal("turns", Spoken($"{Shown.Quoted(text)}: in a count decimals use the point."), CountedEnds.Gearbox.Example)
            : TurnReading.ReadGear(text);
}
