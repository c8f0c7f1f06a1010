using BuildLog.Data.Sessions;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>One length read several times with one tape or caliper, as the small sessions ask it.</summary>
internal static class ReadingsEntries
{
    private const string Readings = "readings";
    private const string Tool = "tool";

    /// <param name="caption">What is read.</param>
    /// <param name="example">A reading.</param>
    /// <param name="tool">How good the usual tool is.</param>
    /// <param name="known">The session that is put right; null for a new one.</param>
    public static IEnumerable<Entry> For(string caption, string example, string tool, Session? known) =>
    [
        new LinesEntry(Readings, caption, 4)
        {
            Initial = SessionEntries.Readings(known),
            Hint = Spoken($"one a line, such as {example}; a bare number is in mm"),
            Check = values => SessionEntries.Lines(values, Readings, LengthReadings.Read, example).Refusal?.Sentence,
        },
        new TextEntry(Tool, Spoken("Tool good to")) { Initial = tool, Hint = Spoken("tape 2 mm, caliper 0.1 mm"), Check = Forms.Checks.Needed(Tool, LengthReadings.Read), Echo = OtherUnits.Of(Tool, LengthReadings.Read) },
    ];

    public static (IReadOnlyList<string> Readings, string Tool) Of(FormValues values) => (values.Lines(Readings), values[Tool]);
}
