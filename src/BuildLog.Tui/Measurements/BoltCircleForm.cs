using System.Globalization;
using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks for chords between studs; the pitch circle they make is noted on the hub or the wheels.</summary>
public static class BoltCircleForm
{
    private const string Example = "67.2 mm";

    /// <param name="part">An axle or a set of wheels.</param>
    /// <param name="save">Stores the part with the edit applied.</param>
    public static Form For(BoltedComponent part, Action<Action<BoltedComponent>> save) => new()
    {
        Title = $"Bolt circle: {part.Name}",
        HelpPage = "BoltCircle",
        Cautions = Cautions.AtTheWheel,
        SetUp = SetUps.BoltCircle,
        SaveCaption = "Keep",
        Entries =
        [
            new ChoiceEntry("studs", "Studs", [.. Enumerable.Range(3, 8).Select(studs => Invariant(studs)).Select(studs => new ChoiceOption(studs, studs))]) { Initial = part.Studs is { } known ? Invariant(known) : "5" },
            new ChoiceEntry("between", "Between", [new(nameof(Chord.Adjacent), "adjacent studs"), new(nameof(Chord.SkipOne), "skip-one"), new(nameof(Chord.Across), "straight across")])
            {
                Initial = nameof(Chord.SkipOne),
                Check = values => Parsed.From(() => BoltCircle.Factor(Studs(values), Between(values))).Refusal?.Sentence,
            },
            .. ReadingsEntries.For("Chords", Example, "0.2 mm"),
        ],
        Echo = values => Circle(values).Understood(out var circle) ? Says(Studs(values), circle) : [],
        Save = values => Forms.Checks.Try(() =>
        {
            var noted = Noted.Of(Spec.PitchCircle, Rounded.WithInterval(Circle(values).OrRefuse(), Units.Millimetre), Source.Measured);
            save(edited => (edited.Studs, edited.PitchCircle) = (Studs(values), noted));
        }),
    };

    private static IReadOnlyList<string> Says(int studs, Measured circle) =>
    [
        $"Bolt circle {Rounded.WithInterval(circle, Units.Millimetre)} (95 %), {Rounded.WithInterval(circle, Units.Inch)}.",
        BoltPatterns.Matching(studs, circle) is { Count: > 0 } known
            ? $"May be {string.Join(", ", known.Take(3).Select(pattern => pattern.Name))}."
            : "No usual pattern lies inside that: measure another pair of studs.",
    ];

    private static Parsed<Measured> Circle(FormValues values)
        => ReadingsEntries.Mean(values, "chord", Example).Then(chord => Parsed.From(() => BoltCircle.FromChord(chord, Studs(values), Between(values))));

    private static int Studs(FormValues values) => int.TryParse(values["studs"], NumberStyles.None, CultureInfo.InvariantCulture, out var studs) ? studs : 5;

    private static Chord Between(FormValues values) => Enum.TryParse<Chord>(values["between"], out var chord) ? chord : Chord.Adjacent;

    private static string Invariant(int number) => number.ToString(CultureInfo.InvariantCulture);
}
