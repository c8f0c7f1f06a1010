using System.Globalization;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Options;

namespace BuildLog.Tui.Commands;

/// <summary>The shapes that many answers share.</summary>
internal static class Json
{
    public static JsonObject Interval95(Measured measured, Unit unit) => Interval(measured.Interval95, unit);

    public static JsonObject Interval(Interval interval, Unit unit) => Range(unit.FromBase(interval.Low), unit.FromBase(interval.High));

    /// <summary>The ± that goes with 95 %, in the unit; null where nothing is known, or a number of infinite width.</summary>
    public static JsonNode? Expanded95(Measured? measured, Unit unit) => measured is null ? null : Finite((unit.FromBase(measured.Value + measured.Expanded95) - unit.FromBase(measured.Value - measured.Expanded95)) / 2);

    public static JsonObject Counts(VerdictCounts counts) => new() { ["fits"] = counts.Fits, ["watch"] = counts.Watch, ["clash"] = counts.Clash, ["open"] = counts.Open };

    /// <summary>A window; an open side is null.</summary>
    public static JsonObject Window(Window window, Unit unit) => Range(unit.FromBase(window.Low), unit.FromBase(window.High));

    /// <summary>Null for infinitely many, as stated limits have.</summary>
    public static JsonNode? DegreesOfFreedom(Measured measured) => Finite(measured.DegreesOfFreedom);

    /// <summary>Year, month and day: <c>2026-11-27</c>; null for no day.</summary>
    public static string? Day(DateOnly? day) => day?.ToString("O", CultureInfo.InvariantCulture);

    public static JsonArray Array<T>(IEnumerable<T> items, Func<T, JsonNode?> node) => new([.. items.Select(node)]);

    /// <summary>The map of axle against tyre, in letters and in numbers: a list of verdicts an axle ratio, one for each circumference; null where none was asked for.</summary>
    public static JsonObject? Map(MapWords? map) => map is null ? null : new()
    {
        ["axleRatios"] = Array(map.Rows, row => row),
        ["from"] = map.Left,
        ["to"] = map.Right,
        ["rows"] = Array(map.Cells, row => row),
        ["ratios"] = Array(map.Region.Axles, ratio => ratio),
        ["circumferencesM"] = Array(map.Region.Tyres, length => length),
        ["verdicts"] = Array(map.Region.Verdicts, row => Array(row, verdict => verdict.InWords())),
    };

    private static JsonObject Range(double low, double high) => new() { ["low"] = Finite(low), ["high"] = Finite(high) };

    private static JsonNode? Finite(double value) => double.IsFinite(value) ? value : null;
}
