using BuildLog.Gearing.Checks;
namespace BuildLog.Tui.Workbench;

/// <summary>The findings of one driveline, worst first.</summary>
/// <param name="Missing">Said instead of a list when nothing can be checked yet: what to do first.</param>
public sealed record FindingsModel(IReadOnlyList<FindingRow> Rows, string? Missing = null);

/// <summary>One finding: in the list the first three, below it the rest.</summary>
/// <param name="Title">The trade's name of the matter: "cruise".</param>
/// <param name="Place">Where it is, as words: "between axle and tyres"; empty for nowhere.</param>
/// <param name="Sentence">What it says, with the numbers.</param>
/// <param name="Why">Why the verdict is this one: inside, outside, uncertainty, missing input, in a sentence.</param>
/// <param name="Bar">The number with its interval against the wanted window; null where there is none.</param>
/// <param name="Cures">What would cure it, each a short clause.</param>
/// <param name="SettledBy">The measurement that would settle it; null where nothing is left to settle.</param>
/// <param name="Source">Where the limit comes from: "owner's goal".</param>
/// <param name="Check">The check's id; its help page has the same name.</param>
public sealed record FindingRow(
    Verdict Verdict,
    string Title,
    string Sentence,
    string Place = "",
    string Why = "",
    WindowBar? Bar = null,
    IReadOnlyList<string>? Cures = null,
    string? SettledBy = null,
    string Source = "",
    string Check = "");

/// <summary>A number with its 95 % interval against a wanted window; one side of the window may be open.</summary>
/// <param name="Says">The number as it should be read: "3610 ± 40 rev/min, wanted 2250 to 2550".</param>
public sealed record WindowBar(double Low, double Value, double High, double? WantedLow, double? WantedHigh, string Says);
