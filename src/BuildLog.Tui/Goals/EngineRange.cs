using System.Text.RegularExpressions;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Goals;

/// <summary>An engine speed that was typed by its two ends, <c>2400 to 2700 rpm</c>: the middle, and what may be off it.</summary>
/// <param name="Middle">As a goal keeps it.</param>
/// <param name="Tolerance">The same, to either side.</param>
internal sealed partial record EngineRange(string Middle, string Tolerance)
{
    /// <summary>Null where one speed was typed, or nothing like a range.</summary>
    public static Parsed<EngineRange>? Read(string text)
        => Ends().Match(text.Trim()) is not { Success: true } ends ? (Parsed<EngineRange>?)null
            : CruiseGoal.ReadEngineSpeed(ends.Groups["high"].Value).Then(high =>
                CruiseGoal.ReadEngineSpeed(InUnitOf(high, ends.Groups["low"].Value)).Then(low => Of(low, high, text)));

    // "2400 to 2700 rpm" says the unit once.
    private static string InUnitOf(Typed high, string low) => high.IsBare || !char.IsDigit(low[^1]) ? low : $"{low} {high.Unit.Symbol}";

    private static Parsed<EngineRange> Of(Typed low, Typed high, string text)
    {
        static string Told(double value) => $"{Rounded.Typed(Units.RevolutionPerMinute.FromBase(value))} rpm";
        return low.Value < high.Value
            ? new EngineRange(Told((low.Value + high.Value) / 2), Told((high.Value - low.Value) / 2))
            : new Refusal("engine", Spoken($"{Shown.Quoted(text.Trim())}: the lower end comes first."), "2400 to 2700 rpm");
    }

    [GeneratedRegex(@"^(?<low>[^\s].*?)\s*(?:\b(?:to|tot)\b|[-–—]|\.\.)\s*(?<high>\d.*)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Ends();
}
