using BuildLog.Data.Sessions;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>What every session asks besides its readings: when, with whom, under what conditions.</summary>
internal static class SessionEntries
{
    /// <param name="today">The day it is.</param>
    /// <param name="known">The session that is put right; null for a new one.</param>
    public static IEnumerable<Entry> For(DateOnly today, Session? known = null) =>
    [
        DayEntry.Past("date", Spoken("Date"), today, known?.Day),
        new TextEntry("helper", Spoken("Who helped")) { Initial = known?.Helper ?? "", IsRemembered = true, Hint = Spoken("nobody should do this alone") },
        new TextEntry("conditions", Spoken("Conditions")) { Initial = known?.Conditions ?? "", IsRemembered = true, Hint = Spoken("cold or warm, on stands or the floor, anything odd") },
    ];

    /// <summary>The form's title, for a new session or one that is put right.</summary>
    public static string Title(string what, string subject, Session? known)
        => known is null ? $"{what}: {subject}" : Spoken($"Correct the {known.Method} {known}: {subject}");

    /// <summary>The readings of a session that is put right, one a line.</summary>
    public static string Readings(Session? known) => string.Join('\n', known?.Readings ?? []);

    /// <summary>How finely the two ends of a count were read.</summary>
    /// <param name="ends">What is counted: the one is read, the other set by its mark.</param>
    /// <param name="readTo">As typed before; null for what is usual.</param>
    /// <param name="align">As typed before; null for what is usual.</param>
    public static IEnumerable<Entry> Precision(CountedEnds ends, string? readTo = null, string? align = null) =>
    [
        new TextEntry("readTo", Spoken("Read to"))
        {
            Initial = readTo ?? "0.25",
            Hint = Spoken($"smallest part of {(ends == CountedEnds.Axle ? Spoken("a propshaft turn") : Spoken("an input turn"))}, such as 1/4"),
            Check = Forms.Checks.Needed("readTo", text => ReadTo(text, ends)),
        },
        new TextEntry("align", ends == CountedEnds.Axle ? Spoken("Wheel mark off by") : Spoken("Mark off by"))
        {
            Initial = align ?? "0.02",
            Hint = Spoken("turns; 0.02 is about 7 degrees"),
            Check = Forms.Checks.Needed("align", text => Align(text, ends)),
        },
    ];

    public static Parsed<CountPrecision> PrecisionOf(FormValues values, CountedEnds ends)
        => ReadTo(values["readTo"], ends).Then(read => Align(values["align"], ends).Then<CountPrecision>(set => set with { ReadTo = read.ReadTo }));

    /// <summary>The message at counts that each are one, but together make no such ratio. How finely they were read has its message at its own entry.</summary>
    public static string? NoRatio(FormValues values, CountedEnds ends, Func<CountPrecision, Parsed<TurnCount>> count)
        => count(PrecisionOf(values, ends).Understood(out var how) ? how : new()).Refusal?.Sentence;

    private static Parsed<CountPrecision> ReadTo(string text, CountedEnds ends) => QuantityText.ReadNumber(text).Showing("1/4").Then(part => Possible(new(ReadTo: part), ends));

    private static Parsed<CountPrecision> Align(string text, CountedEnds ends) => QuantityText.ReadNumber(text).Showing("0.02").Then(turns => Possible(new(Align: turns), ends));

    private static Parsed<CountPrecision> Possible(CountPrecision how, CountedEnds ends) => how.Refuse(ends) is { } refusal ? refusal : how;

    public static void Apply(FormValues values, Session session, DateOnly today)
    {
        session.Day = DayEntry.In(values, "date", today);
        session.Helper = values["helper"];
        session.Conditions = values["conditions"];
    }

    /// <summary>All lines understood, or the refusal of the first that is not, naming its line.</summary>
    public static Parsed<List<T>> Lines<T>(FormValues values, string id, Func<string, Parsed<T>> read, string example)
        where T : notnull
    {
        var lines = values.Lines(id);
        if (lines.Count == 0) return new Refusal("missing", Spoken("Write at least one reading."), example);

        var understood = new List<T>();
        foreach (var (line, k) in lines.Select((line, k) => (line, k)))
        {
            var reading = read(line);
            if (!reading.Understood(out var value)) return reading.Refusal! with { Message = Spoken($"Line {k + 1}: {reading.Refusal.Message}") };
            understood.Add(value);
        }

        return understood;
    }
}
