using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>What is asked before and after a tally: how the wheels turn, and what was left of the propshaft's last turn.</summary>
public static class TallyForms
{
    public static readonly IReadOnlyList<ChoiceOption> ReadingSteps = [new("0.25", "quarters"), new("0.1", "tenths"), new("0.03", "degrees, to ten")];

    /// <summary>Which way the other wheel turns, with a drawing of the set-up; cautions first.</summary>
    public static Form SetUp(string axle, Action<Wheels> chosen) => new()
    {
        Title = $"Turn count of {axle}",
        HelpPage = "TurnCount",
        Cautions = Cautions.TurnCount,
        SaveCaption = "Start counting",
        Entries =
        [
            new ChoiceEntry("wheels", "The other wheel",
            [
                new(nameof(Wheels.OneHeld), "turns backwards: open, so hold it still"),
                new(nameof(Wheels.Together), "turns the same way: locked, or rolling"),
                new(nameof(Wheels.Each), "turns as it likes: count both"),
            ])
            {
                Hint = "turn one wheel by hand and look; the classic factor of two hangs on this",
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
        SaveCaption = "Start counting",
        Entries = [],
        Save = _ => SaveOutcome.Done,
    };

    /// <summary>The last part of a turn of the quick end.</summary>
    public static Form Fraction(RatioTally tally, Action<LastPart> read) => new()
    {
        Title = FormattableString.Invariant($"{tally.DrivenTurns} {tally.Driven} turns, {tally.DrivingTurns} {tally.Driving} turns, and?"),
        HelpPage = tally.HelpPage,
        SaveCaption = "Go on",
        Entries =
        [
            new TextEntry("fraction", "Part of a turn")
            {
                Hint = $"past the last whole {tally.Driving} turn: 1/4, 0.3 or 120°; empty for none",
                Check = values => TallyFraction.Read(values["fraction"]).Refusal?.Sentence,
            },
            .. tally.OtherDriven is { } other ? [Other(other)] : Enumerable.Empty<Entry>(),
            new ChoiceEntry("readTo", "Read in", ReadingSteps) { Initial = "0.25" },
        ],
        Echo = values => Part(values).Understood(out var part) ? [$"Written down as {tally.Reading(part.Fraction, part.OtherFraction)}."] : [],
        Save = values =>
        {
            read(Part(values).OrRefuse());
            return SaveOutcome.Done;
        },
    };

    private static TextEntry Other(string wheel) => new("other", $"Part, {wheel}")
    {
        Hint = $"past the {wheel}'s last whole turn: 1/4, 0.3 or 120°; empty for none",
        Check = values => TallyFraction.Read(values["other"]).Refusal?.Sentence,
    };

    private static Parsed<LastPart> Part(FormValues values)
        => TallyFraction.Read(values["fraction"]).Then(fraction => TallyFraction.Read(values["other"]).Then<LastPart>(other => new LastPart(fraction, values["readTo"], other)));

    private static Wheels WheelsOf(FormValues values) => Enum.TryParse<Wheels>(values["wheels"], out var wheels) ? wheels : Wheels.OneHeld;

    private static IReadOnlyList<string> Drawing(Wheels wheels) =>
    [
        "            mark |   propshaft: its turns are counted",
        "                 |",
        wheels switch
        {
            Wheels.OneHeld => "  held still [#]=O=[#] turned by hand, mark on the tyre",
            Wheels.Each => "        left [#]=O=[#] right, a mark on either tyre",
            _ => "   turns too [#]=O=[#] turned by hand, mark on the tyre",
        },
        "1 Mark flange and tyre. 2 Take up the slack, always the same way.",
        wheels == Wheels.Each
            ? "3 Propshaft: Space. 4 Left wheel: Enter, right wheel: Tab. Stop on the left."
            : "3 Propshaft mark passes: Space. 4 Tyre mark is back: Enter. Stop on it.",
    ];
}
