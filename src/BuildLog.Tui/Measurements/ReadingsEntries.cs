using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>One length read several times with one tape or caliper, as the small sessions ask it.</summary>
internal static class ReadingsEntries
{
    private const string Readings = "readings";
    private const string Tool = "tool";

    public static IEnumerable<Entry> For(string caption, string example, string tool) =>
    [
        new LinesEntry(Readings, caption, 4) { Hint = $"one a line, such as {example}; a bare number is in mm", Check = values => Lengths(values, example).Refusal?.Sentence },
        new TextEntry(Tool, "Tool good to") { Initial = tool, Hint = "tape 2 mm, caliper 0.1 mm", Check = Forms.Checks.Needed(Tool, ReadLength), Echo = OtherUnits.Of(Tool, ReadLength) },
    ];

    /// <summary>Their mean, metres.</summary>
    public static Parsed<Measured> Mean(FormValues values, string name, string example)
        => Lengths(values, example).Then(lengths => ReadLength(values[Tool]).Then(tool =>
            Parsed.From(() => RepeatedReadings.Mean([.. lengths.Select(length => length.Value)], tool.Value, name))));

    private static Parsed<List<Typed>> Lengths(FormValues values, string example) => SessionEntries.Lines(values, Readings, ReadLength, example);

    private static Parsed<Typed> ReadLength(string text) => QuantityText.ReadPlain(text, Kind.Length, Units.Millimetre);
}
