using BuildLog.Gearing.Checks;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Options;

/// <summary>The ways out of a vehicle's clashes: what leaves no clash, then what only helps, in both the fewest parts first.</summary>
/// <param name="Summary">How much was searched.</param>
/// <param name="Notes">What was thrown out and why, and which wishes exclude each other.</param>
/// <param name="Missing">Said instead of a list where there is none.</param>
internal sealed record OptionsModel(IReadOnlyList<OptionRow> Rows, string Summary = "", IReadOnlyList<string>? Notes = null, string Missing = "")
{
    /// <summary>Which clashes no way out cures, what would, and what else cures one: said before what was searched.</summary>
    public IReadOnlyList<string> Clashes { get; init; } = [];

    public static OptionsModel None { get; } = new([]);
}

/// <summary>One way out.</summary>
/// <param name="Place">Its number in the list, from 1.</param>
/// <param name="Changes">Parts changed.</param>
/// <param name="Worst">The worst of its findings.</param>
/// <param name="Verdicts">How many findings it has of each verdict that is not fits, the worst first, each by itself in words.</param>
/// <param name="Parts">What would be fitted, where each comes from.</param>
/// <param name="Short">The same without that.</param>
/// <param name="Cruise">The engine speed at the first cruise goal; empty where it cannot be said.</param>
/// <param name="Cost">What it costs, or that nobody knows.</param>
/// <param name="CostInShort">The same for a column, or that it has to be inspected first.</param>
/// <param name="Sure">In which share of the uncertainty it still fits.</param>
/// <param name="Says">The sentences of the findings that do not fit, the worst first.</param>
internal sealed record OptionRow(
    int Place, int Changes, Verdict Worst, IReadOnlyList<string> Verdicts, IReadOnlyList<string> Parts, string Short, string Cruise, string Cost, string CostInShort, string Sure, IReadOnlyList<(Verdict Verdict, string Sentence)> Says)
{
    /// <summary>That it was rejected before, or others of its number, and the rule that failed; null where they were not.</summary>
    public RejectedBefore? Rejected { get; init; }

    /// <summary>A part of it is on offer, and judged there by what it does itself.</summary>
    public bool IsOffered { get; init; }

    /// <summary>It helps, but something clashes with it too.</summary>
    public bool StillClashes => Worst == Verdict.Clash;

    /// <summary>The findings that do not fit, in words.</summary>
    public string Counts => string.Join(' ', Verdicts);
}
