using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks for a roll-out, cautions first, and says what the marks so far make.</summary>
public static class RollOutForm
{
    /// <param name="wheels">The set that is rolled.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="units">The units to show.</param>
    /// <param name="save">Stores the session with the edit applied.</param>
    /// <param name="counted">Turns just counted, <c>5:</c>, whose distance is still to be typed; the cautions have been acknowledged.</param>
    /// <param name="known">The session that is put right: nothing is rolled for it.</param>
    public static Form For(WheelSetComponent wheels, DateOnly today, UnitSystem units, Action<Action<RollOutSession>> save, string? counted = null, RollOutSession? known = null) => new()
    {
        Title = known is null ? Spoken($"Roll out: {wheels.Name}") : Spoken($"Correct the roll-out {known}: {wheels.Name}"),
        HelpPage = "RollOut",
        Cautions = counted is null && known is null ? Cautions.RollOut : [],
        SaveCaption = Spoken("Keep"),
        BeginsAt = counted is null ? null : Spoken("rolls"), // the distance is all that lacks
        Entries =
        [
            new ChoiceEntry("loaded", Spoken("The tyre"), [new("yes", Spoken("carries the vehicle, as driven")), new("no", Spoken("was rolled as a loose wheel"))]) { Initial = known?.Loaded == false ? "no" : "yes" },
            new LinesEntry("rolls", Spoken("Marks"), 4)
            {
                Initial = counted ?? SessionEntries.Readings(known),
                Hint = Spoken("one a line, turns:distance from the start, such as 3:6125 mm"),
                Check = values => Readings(values).Refusal?.Sentence,
            },
            new TextEntry("tape", Spoken("Tape good to")) { Initial = known?.Tape ?? "2 mm", Hint = Spoken("such as 2 mm"), Check = Forms.Checks.Needed("tape", ReadTape), Echo = OtherUnits.Of("tape", ReadTape) },
            new TextEntry("align", Spoken("Wheel mark off by")) { Initial = known?.Align ?? "0.01", Hint = Spoken("turns; 0.01 is about 4 degrees"), Check = Forms.Checks.Needed("align", text => QuantityText.ReadNumber(text).Showing("0.01")) },
            new TextEntry("pressure", Spoken("Tyre pressure"))
            {
                Initial = known?.Pressure ?? "",
                Hint = Spoken("such as 2.2 bar; recorded only"),
                Check = Forms.Checks.IfTyped("pressure", ReadPressure),
                Echo = OtherUnits.Of("pressure", ReadPressure),
            },
            .. SessionEntries.For(today, known),
        ],
        Echo = values => Roll(values, wheels.Construction).Understood(out var roll) ? RollOutWords.Live(roll, units) : [],
        Save = values => Roll(values, wheels.Construction).Refusal is { } refusal
            ? SaveOutcome.Refuse("rolls", refusal.Sentence)
            : Forms.Checks.Try(() => save(session =>
            {
                session.Loaded = values.IsYes("loaded");
                session.Readings = values.Lines("rolls");
                (session.Tape, session.Align, session.Pressure) = (values["tape"], values["align"], values["pressure"]);
                SessionEntries.Apply(values, session, today);
            })),
    };

    private static Parsed<Typed> ReadPressure(string text) => QuantityText.Read(text, Kind.Pressure, Units.Bar);

    private static Parsed<Typed> ReadTape(string text) => QuantityText.Read(text, Kind.Length, Units.Millimetre).Showing("2 mm");

    private static Parsed<List<RollReading>> Readings(FormValues values) => SessionEntries.Lines(values, "rolls", RollReading.Read, "3:6125 mm");

    private static Parsed<RollOut> Roll(FormValues values, Construction construction)
        => Readings(values).Then(readings =>
            ReadTape(values["tape"]).Then(tape =>
                QuantityText.ReadNumber(values["align"]).Then(align =>
                    Parsed.From(() => RollOut.Of(readings, new(values.IsYes("loaded"), construction, tape.Value, align))))));
}
