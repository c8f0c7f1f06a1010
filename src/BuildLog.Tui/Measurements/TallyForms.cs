using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>What is asked before and after a tally: how the wheels turn, and what was left of the propshaft's last turn.</summary>
public static class TallyForms
{
    private const string Degrees = "0.03";

    public static IReadOnlyList<ChoiceOption> ReadingSteps => [new("0.25", Spoken("quarters")), new("0.1", Spoken("tenths")), new(Degrees, Spoken("degrees, to ten"))];

    /// <summary>Which way the other wheel turns, with a drawing of the set-up; cautions first.</summary>
    public static Form SetUp(string axle, Action<Wheels> chosen) => new()
    {
        Title = Spoken($"Turn count of {axle}"),
        HelpPage = "TurnCount",
        Cautions = Cautions.TurnCount,
        SaveCaption = Spoken("Start counting"),
        Entries =
        [
            new ChoiceEntry("wheels", Spoken("The other wheel"),
            [
                new(nameof(Wheels.OneHeld), Spoken("turns backwards: open, so hold it still")),
                new(nameof(Wheels.Together), Spoken("turns the same way: locked, or rolling")),
                new(nameof(Wheels.Each), Spoken("turns as it likes: count both")),
            ])
            {
                Hint = Spoken("turn one wheel by hand and look; the classic factor of two hangs on this"),
            },
        ],
        Echo = values => values.IsEmpty("wheels") ? [] : Drawing(WheelsOf(values)),
        Save = values =>
        {
            chosen(WheelsOf(values));
            return SaveOutcome.Done;
        },
    };

    /// <summary>Cautions and set-up of a count that needs no answer before it begins.</summary>
    public static Form Ready(string what, string helpPage, IReadOnlyList<string> cautions, IReadOnlyList<string> setUp) => new()
    {
        Title = what,
        HelpPage = helpPage,
        Cautions = cautions,
        SetUp = setUp,
        SaveCaption = Spoken("Start counting"),
        Entries = [],
        Save = _ => SaveOutcome.Done,
    };

    /// <summary>The last part of a turn of the quick end.</summary>
    public static Form Fraction(RatioTally tally, Action<LastPart> read) => new()
    {
        Title = Spoken($"{tally.DrivenTurns} {tally.Driven} turns, {tally.DrivingTurns} {tally.Driving} turns, and?"),
        HelpPage = tally.HelpPage,
        SaveCaption = Spoken("Go on"),
        Entries =
        [
            new TextEntry("fraction", Spoken("Part of a turn"))
            {
                Hint = Spoken($"past the last whole {tally.Driving} turn: 1/4, 0.3 or 120°; empty for none"),
                Check = values => TallyFraction.Read(values["fraction"]).Refusal?.Sentence,
            },
            .. tally.OtherDriven is { } other ? [Other(other)] : Enumerable.Empty<Entry>(),
            new ChoiceEntry("readTo", Spoken("Read in"), ReadingSteps) { Initial = "0.25" },
        ],
        Echo = values => Part(values).Understood(out var part) ? [Written(values, tally.Reading(part.Fraction, part.OtherFraction), part)] : [],
        Save = values =>
        {
            read(Part(values).OrRefuse());
            return SaveOutcome.Done;
        },
    };

    private static string Written(FormValues values, string reading, LastPart part) => part.ReadTo == values["readTo"] ? Spoken($"Written down as {reading}.")
        : Spoken($"Written down as {reading}, read in {ReadingSteps.First(step => step.Value == part.ReadTo).Words}, as typed.");

    private static TextEntry Other(string wheel) => new("other", Spoken($"Part, {wheel}"))
    {
        Hint = Spoken($"past the {wheel}'s last whole turn: 1/4, 0.3 or 120°; empty for none"),
        Check = values => TallyFraction.Read(values["other"]).Refusal?.Sentence,
    };

    private static Parsed<LastPart> Part(FormValues values)
        => TallyFraction.Read(values["fraction"]).Then(fraction => TallyFraction.Read(values["other"]).Then<LastPart>(other => new LastPart(fraction, StepOf(values), other)));

    // What is typed in degrees was not read in quarters, whatever was left chosen.
    private static string StepOf(FormValues values)
        => TallyFraction.IsInDegrees(values["fraction"]) || TallyFraction.IsInDegrees(values["other"]) ? Degrees : values["readTo"];

    private static Wheels WheelsOf(FormValues values) => Enum.TryParse<Wheels>(values["wheels"], out var wheels) ? wheels : Wheels.OneHeld;

    private static IReadOnlyList<string> Drawing(Wheels wheels) =>
    [
        Spoken("            mark |   propshaft: its turns are counted"),
        "                 |",
        wheels switch
        {
            Wheels.OneHeld => Spoken("  held still [#]=O=[#] turned by hand, mark on the tyre"),
            Wheels.Each => Spoken("        left [#]=O=[#] right, a mark on either tyre"),
            _ => Spoken("   turns too [#]=O=[#] turned by hand, mark on the tyre"),
        },
        Spoken("1 Mark flange and tyre. 2 Take up the slack, always the same way."),
        wheels == Wheels.Each
            ? Spoken("3 Propshaft: Space. 4 Left wheel: Enter, right wheel: Tab. Stop on the left.")
            : Spoken("3 Propshaft mark passes: Space. 4 Tyre mark is back: Enter. Stop on it."),
    ];
}
