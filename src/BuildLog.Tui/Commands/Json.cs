using System.Text.Json.Nodes;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Options;

namespace BuildLog.Tui.Commands;

/// <summary>The shapes that many answers share.</summary>
internal static class Json
{
    public static JsonObject Interval95(Measured measured, Unit unit) => Interval(measured.Interval95, unit);

    public static JsonObject Interval(Interval interval, Unit unit) => Range(unit.FromBase(interval.Low), unit.FromBase(interval.High));

    /// <summary>A window; an open side is null.</summary>
    public static JsonObject Window(Window window, Unit unit) => Range(unit.FromBase(window.Low), unit.FromBase(window.High));

    /// <summary>Null for infinitely many, as stated limits have.</summary>
    public static JsonNode? DegreesOfFreedom(Measured measured) => Finite(measured.DegreesOfFreedom);

    public static JsonArray Array<T>(IEnumerable<T> items, Func<T, JsonNode?> node) => new([.. items.Select(node)]);

    /// <summary>The map of axle against tyre; null where none was asked for.</summary>
    public static JsonObject? Map(MapWords? map) => map is null ? null : new()
    {
        ["axleRatios"] = Array(map.Rows, row => row),
        ["from"] = map.Left,
        ["to"] = map.Right,
        ["rows"] = Array(map.Cells, row => row),
    };

    private static JsonObject Range(double low, double high) => new() { ["low"] = Finite(low), ["high"] = Finite(high) };

    private static JsonNode? Finite(double value) => double.IsFinite(value) ? value : null;
}
