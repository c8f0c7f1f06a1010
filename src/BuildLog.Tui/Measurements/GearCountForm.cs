using BuildLog.Data.Sessions;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks for the count of one gear, or of an overdrive unit, and says what the counts so far make.</summary>
public static class GearCountForm
{
    /// <param name="box">The gearbox's name.</param>
    /// <param name="gear">Which of its gears.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="save">Stores the session with the edit applied.</param>
    /// <param name="tally">What was just counted; its cautions have been acknowledged.</param>
    /// <param name="known">The session that is put right: nothing is turned for it.</param>
    public static Form For(string box, string gear, DateOnly today, Action<Action<GearCountSession>> save, FinishedTally? tally = null, GearCountSession? known = null) => new()
    {
        Title = known is null ? Spoken($"Count {CountedGear.InWords(gear)}: {box}") : Spoken($"Correct the count of {CountedGear.InWords(gear)} {known}: {box}"),
        HelpPage = "GearCount",
        Cautions = tally is null && known is null ? Cautions.GearCount : [],
        SaveCaption = Spoken("Keep"),
        Entries =
        [
            new LinesEntry("turns", Spoken("Counts"), 4)
            {
                Initial = tally?.Reading ?? SessionEntries.Readings(known),
                Hint = Spoken("one a line, output:input, such as 10:30.1"),
                Check = values => SessionEntries.NoRatio(values, CountedEnds.Gearbox, how => Count(values, how)),
            },
            .. SessionEntries.Precision(CountedEnds.Gearbox, tally?.ReadTo ?? known?.ReadTo, known?.Align),
            .. SessionEntries.For(today, known),
        ],
        Echo = values => SessionEntries.PrecisionOf(values, CountedEnds.Gearbox).Then(how => Count(values, how)).Understood(out var count) ? GearCountWords.Live(count) : [],
        Save = values => Forms.Checks.Try(() => save(session =>
        {
            session.Readings = values.Lines("turns");
            (session.ReadTo, session.Align) = (values["readTo"], values["align"]);
            SessionEntries.Apply(values, session, today);
        })),
    };

    private static Parsed<TurnCount> Count(FormValues values, CountPrecision how)
        => SessionEntries.Lines(values, "turns", TurnReading.ReadGear, "10:30.1").Then(readings => Parsed.From(() => TurnCount.OfGear(readings, how)));
}
