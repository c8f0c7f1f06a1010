using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speedometers;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks what the odometer showed over measured distances; what it reads, and the correction, follow.</summary>
public static class SpeedometerRunForm
{
    /// <param name="vehicle">The vehicle driven.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="save">Stores the session with the edit applied.</param>
    /// <param name="known">The session that is put right.</param>
    public static Form For(Vehicle vehicle, DateOnly today, Action<Action<SpeedometerRunSession>> save, SpeedometerRunSession? known = null) => new()
    {
        Title = SessionEntries.Title(Spoken("Speedometer run"), vehicle.Name, known),
        HelpPage = "SpeedometerRun",
        Cautions = known is null ? Cautions.OnTheRoad : [],
        SetUp = known is null ? SetUps.SpeedometerRun : [],
        SaveCaption = Spoken("Keep"),
        Entries =
        [
            new LinesEntry("runs", Spoken("Measured: shown"), 3)
            {
                Initial = SessionEntries.Readings(known),
                Hint = Spoken("a run a line, the true distance first, such as 10 km: 10.4 km"),
                Check = values => SessionEntries.Lines(values, "runs", RunReading.Read, "10 km: 10.4 km").Refusal?.Sentence,
            },
            new TextEntry("realStep", Spoken("True distance to")) { Initial = known?.Tape ?? "10 m", Hint = Spoken("posts and satellite 10 m"), Check = Forms.Checks.Needed("realStep", RunReading.ReadDistance) },
            new TextEntry("shownStep", Spoken("Odometer read to")) { Initial = known?.Step ?? "0.1 km", Hint = Spoken("the smallest step of its drum"), Check = Forms.Checks.Needed("shownStep", RunReading.ReadDistance) },
            .. SessionEntries.For(today, known),
        ],
        Echo = values => Parsed.From(() => Filled(values, new(vehicle)).Result()).Understood(out var run) ? Says(run) : [],
        Save = values => Forms.Checks.Try(() => save(session => SessionEntries.Apply(values, Filled(values, session), today))),
    };

    /// <summary>What it shows of the truth, and what would set it right.</summary>
    public static IReadOnlyList<string> Says(Reading run)
    {
        var error = run.OdometerError;
        var way = error.Interval95 is { Low: <= 0, High: >= 0 } ? Spoken("right as far as this run can tell") : error.Value > 0 ? Spoken("high") : Spoken("low");
        return
        [
            Spoken($"It shows {Rounded.WithInterval(run.Share, Units.One)} of the truth (95 %): {way}."),
            Spoken($"A correction box of {Rounded.WithInterval(run.Correction, Units.One)} would set it right."),
        ];
    }

    private static SpeedometerRunSession Filled(FormValues values, SpeedometerRunSession session)
    {
        session.Readings = values.Lines("runs");
        (session.Tape, session.Step) = (values["realStep"], values["shownStep"]);
        return session;
    }
}
