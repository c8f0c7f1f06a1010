using System.Globalization;
using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks for chords between studs, and says which pitch circle they make.</summary>
public static class BoltCircleForm
{
    /// <param name="part">An axle or a set of wheels.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="save">Stores the session with the edit applied.</param>
    /// <param name="known">The session that is put right.</param>
    public static Form For(BoltedComponent part, DateOnly today, Action<Action<BoltCircleSession>> save, BoltCircleSession? known = null) => new()
    {
        Title = SessionEntries.Title(Spoken("Bolt circle"), part.Name, known),
        HelpPage = "BoltCircle",
        Cautions = known is null ? Cautions.AtTheWheel : [],
        SetUp = known is null ? SetUps.BoltCircle : [],
        SaveCaption = Spoken("Keep"),
        Entries =
        [
            new ChoiceEntry("studs", Spoken("Studs"), [.. Enumerable.Range(3, 8).Select(studs => Invariant(studs)).Select(studs => new ChoiceOption(studs, studs))])
            {
                Initial = Invariant(known?.Studs ?? part.Studs ?? 5),
            },
            new ChoiceEntry("between", Spoken("Between"), [.. Enum.GetValues<Chord>().Select(chord => new ChoiceOption(chord.ToString(), InWords(chord)))])
            {
                Initial = (known?.Between ?? Chord.SkipOne).ToString(),
                Check = values => Parsed.From(() => BoltCircle.Factor(Studs(values), Between(values))).Refusal?.Sentence,
            },
            .. ReadingsEntries.For(Spoken("Chords"), "67.2 mm", known?.Tape ?? "0.2 mm", known),
            .. SessionEntries.For(today, known),
        ],
        Echo = values => Parsed.From(() => Filled(values, new(part)).Result()).Understood(out var circle) ? Says(Studs(values), circle) : [],
        Save = values => Forms.Checks.Try(() => save(session => SessionEntries.Apply(values, Filled(values, session), today))),
    };

    /// <summary>The circle in both units, and which usual pattern it may be.</summary>
    public static IReadOnlyList<string> Says(int studs, Measured circle) =>
    [
        Spoken($"Bolt circle {Rounded.WithInterval(circle, Units.Millimetre)} (95 %), {Rounded.WithInterval(circle, Units.Inch)}."),
        BoltPatterns.Matching(studs, circle) is { Count: > 0 } known
            ? Spoken($"May be {string.Join(", ", known.Take(3).Select(pattern => pattern.Name))}.")
            : Spoken("No usual pattern lies inside that: measure another pair of studs."),
    ];

    /// <summary>Which two studs, for the hand that holds the caliper.</summary>
    public static string InWords(Chord between) => between switch
    {
        Chord.Adjacent => Spoken("adjacent studs"),
        Chord.SkipOne => Spoken("skip-one"),
        Chord.Across => Spoken("straight across"),
        _ => throw new ArgumentOutOfRangeException(nameof(between), between, "No such chord."),
    };

    private static BoltCircleSession Filled(FormValues values, BoltCircleSession session)
    {
        (session.Readings, session.Tape) = ReadingsEntries.Of(values);
        (session.Studs, session.Between) = (Studs(values), Between(values));
        return session;
    }

    private static int Studs(FormValues values) => int.TryParse(values["studs"], NumberStyles.None, CultureInfo.InvariantCulture, out var studs) ? studs : 5;

    private static Chord Between(FormValues values) => Enum.TryParse<Chord>(values["between"], out var chord) ? chord : Chord.Adjacent;

    private static string Invariant(int number) => number.ToString(CultureInfo.InvariantCulture);
}
