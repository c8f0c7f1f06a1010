using BuildLog.Data.Specs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Plans;

/// <summary>A number of a what-if: its owner's word, and as sure as if it stood on the spec sheet.</summary>
internal static class AsTold
{
    /// <param name="line">What it is the number of.</param>
    /// <param name="text">What was typed.</param>
    /// <exception cref="RefusedException">The text means nothing.</exception>
    public static Known Told(this SpecLine line, string text) => line.Known(line.Read(text).OrRefuse(), Source.OwnersWord, line.Words);

    /// <param name="typed">What was typed.</param>
    /// <param name="what">What it is the number of.</param>
    public static Known Told(this Typed typed, string what) => new(typed.ToItsLastDigit(what), Source.OwnersWord, typed.InWords);
}
