using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Plans;

/// <summary>A number of a what-if: nobody's but its owner's word.</summary>
internal static class AsTold
{
    /// <param name="typed">What was typed.</param>
    /// <param name="what">What it is the number of.</param>
    public static Known Told(this Typed typed, string what) => new(typed.ToMeasured(what), Source.OwnersWord, typed.Text);
}
