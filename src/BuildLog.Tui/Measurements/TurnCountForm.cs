using BuildLog.Data.Sessions;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks for a turn count, cautions first, and says what the counts so far make.</summary>
public static class TurnCountForm
{
    /// <param name="axle">The axle's name.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="save">Stores the session with the edit applied.</param>
    /// <param name="tally">What was just counted; its cautions have been acknowledged.</param>
    /// <param name="known">The session that is put right: nothing is turned for it.</param>
    public static Form For(string axle, DateOnly today, Action<Action<TurnCountSession>> save, FinishedTally? tally = null, TurnCountSession? known = null) => new()
    {
        Title = known is null ? Spoken($"Count turns: {axle}") : Spoken($"Correct the turn count {known}: {axle}"),
        HelpPage = "TurnCount",
        Cautions = tally is null && known is null ? Cautions.TurnCount : [],
        SaveCaption = Spoken("Keep"),
        Entries =
        [
            new ChoiceEntry("wheels", Spoken("The other wheel"),
            [
                new(nameof(Wheels.OneHeld), Spoken("is held still (open differential)")),
                new(nameof(Wheels.Together), Spoken("turns the same way (locked, or rolling)")),
                new(nameof(Wheels.Each), Spoken("turns its own way: both are counted")),
            ])
            {
                Initial = (tally?.Wheels ?? known?.Wheels)?.ToString() ?? "",
                Hint = Spoken("the classic factor of two hangs on this"),
            },
            new LinesEntry("turns", Spoken("Counts"), 4)
            {
                Initial = tally?.Reading ?? SessionEntries.Readings(known),
                Hint = Spoken("one a line, wheel:propshaft, such as 10:20 1/2; both wheels: 10,10:41"),
                Check = values => values.IsEmpty("wheels") ? Readings(values).Refusal?.Sentence : SessionEntries.NoRatio(values, CountedEnds.Axle, how => Count(values, how)),
            },
            .. SessionEntries.Precision(CountedEnds.Axle, tally?.ReadTo ?? known?.ReadTo, known?.Align ?? tally?.Align),
            .. SessionEntries.For(today, known),
        ],
        Echo = values => !SessionEntries.PrecisionOf(values, CountedEnds.Axle).Then(how => Count(values, how)).Understood(out var count) ? []
            : values.IsEmpty("wheels") ? [Spoken("First the other wheel: whether it turns makes the factor of two.")]
            : TurnCountWords.Live(count),
        Save = values => Forms.Checks.Try(() => save(session =>
        {
            session.Wheels = WheelsOf(values);
            session.Readings = values.Lines("turns");
            (session.ReadTo, session.Align) = (values["readTo"], values["align"]);
            SessionEntries.Apply(values, session, today);
        })),
    };

    private static Wheels WheelsOf(FormValues values) => Enum.TryParse<Wheels>(values["wheels"], out var wheels) ? wheels : Wheels.OneHeld;

    private static Parsed<List<TurnReading>> Readings(FormValues values) => SessionEntries.Lines(values, "turns", text => TurnReading.Read(text, WheelsOf(values)), "10:20 1/2");

    private static Parsed<TurnCount> Count(FormValues values, CountPrecision how) => Readings(values).Then(readings => Parsed.From(() => TurnCount.Of(readings, how)));
}
