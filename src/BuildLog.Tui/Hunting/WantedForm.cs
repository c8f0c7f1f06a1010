using BuildLog.Data.Costs;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Hunting;

/// <summary>Asks for a part to be hunted: between which values it will do, what it must have, what it may cost and by when.</summary>
internal static class WantedForm
{
    private const char Colon = ':';

    /// <param name="wanted">A new one, or one to be changed.</param>
    /// <param name="bare">The currency of a bare number: the shop's.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="computed">Between which values it would do today; none where nothing wanted depends on it.</param>
    /// <param name="others">What else is or was hunted for the vehicle: each has a name of its own.</param>
    /// <param name="units">The units to show.</param>
    /// <param name="save">Stores it with the edit applied; refusals stay in the form.</param>
    public static Form For(WantedPart wanted, Currency bare, DateOnly today, IReadOnlyList<WindowOfPart> computed, IReadOnlyList<string> others, UnitSystem units, Action<Action<WantedPart>> save)
    {
        var todays = string.Join("; ", computed.Where(window => !window.Window.IsEmpty).Select(window => window.Window.InWords(units.Shown(window.Unit))));
        var window = wanted.Windows.FirstOrDefault() ?? new(Quantity(wanted.Kind), "", "");
        return new()
        {
            Title = Spoken($"Wanted: {wanted.Kind.InWords()}"),
            HelpPage = "Wanted",
            Entries =
            [
                new TextEntry("title", Spoken("Name")) { AnswersFor = ["name-of-the-wanted-part"], Initial = wanted.Title, Hint = Spoken("such as longer axle"), Check = values => Named(values, others) },
                new ChoiceEntry("of", Spoken("Its window is of"), [.. Enum.GetValues<WindowOf>().Select(of => new ChoiceOption(of.ToString(), of.InWords()))]) { Initial = window.Quantity.ToString() },
                new TextEntry("low", Spoken("From")) { AnswersFor = ["window"], Initial = window.Low, Hint = todays.Length == 0 ? Spoken("empty: open on this side") : Spoken($"a window of your own; both empty: {todays}, as it is on the day") },
                new TextEntry("high", Spoken("To")) { Initial = window.High, Hint = Spoken("empty: open on this side") },
                new LinesEntry("musts", Spoken("Must have"), 3) { Initial = string.Join('\n', wanted.MustHaves.Select(must => $"{must.What}: {must.Text}")), Hint = Spoken("one a line, such as bolt circle: 5 × 114.3"), Check = values => Musts(values).Refusal?.Sentence },
                MoneyEntry.IfAny("most", Spoken("At most"), Spoken("such as 250 EUR"), text => Most(text, bare), wanted.Most),
                new TextEntry("deadline", Spoken("Needed by")) { Initial = wanted.Deadline is { } day ? DayText.InWords(day) : "", Hint = Spoken("a date, or empty"), Check = Checks.IfTyped("deadline", text => Deadline(text, wanted, today)) },
                new TextEntry("notes", Spoken("Notes")) { Initial = wanted.Notes },
            ],
            Echo = values => Parsed.From(() => WantedWindows.Doubt(computed, Windows(values, wanted), units) ?? "").Understood(out var doubt) && doubt.Length > 0 ? [Spoken($"! {doubt} It can be kept so.")] : [],
            Save = values => Checks.Try(() => save(edited =>
            {
                (edited.Title, edited.Notes) = (values["title"], values["notes"]);
                edited.Windows = Windows(values, wanted);
                edited.MustHaves = Musts(values).OrRefuse();
                edited.Most = values.IsEmpty("most") ? null : Most(values["most"], bare).OrRefuse();
                edited.Deadline = values.IsEmpty("deadline") ? null : Deadline(values["deadline"], wanted, today).OrRefuse();
            })),
        };
    }

    private static IReadOnlyList<WantedWindow> Windows(FormValues values, WantedPart wanted)
        => values.IsEmpty("low") && values.IsEmpty("high") ? [] : [new(Enum.Parse<WindowOf>(values["of"]), values["low"], values["high"]), .. wanted.Windows.Skip(1)];

    // Counts from the yard and the command line know a hunt by its name.
    private static string? Named(FormValues values, IReadOnlyList<string> others)
        => values.IsEmpty("title") ? Spoken("What is it called?")
            : others.Contains(values["title"].Trim(), StringComparer.OrdinalIgnoreCase) ? Spoken($"{Shown.Quoted(values["title"].Trim())} is or was hunted already: give this one a name that tells them apart, such as '{values["title"].Trim()}, second'.")
            : null;

    private static Parsed<Money> Most(string text, Currency bare)
        => MoneyText.ReadPrice(text, bare).Then<Money>(most => most.Minor > 0 ? most : new Refusal("money", Spoken("Nothing can be bought for at most 0: leave it empty where any price will do."), "250 EUR").In(text));

    // One that has gone by since it was typed stays: it is overdue, and the page says so.
    private static Parsed<DateOnly> Deadline(string text, WantedPart wanted, DateOnly today)
        => DayText.Read(text, today).Then<DateOnly>(day => day >= today || day == wanted.Deadline
            ? day
            : new Refusal("deadline", Spoken($"{DayText.InWords(day)} has gone by: by when is it needed?"), DayText.InWords(today.AddMonths(1))).In(text));

    private static Parsed<List<MustHave>> Musts(FormValues values)
    {
        var musts = new List<MustHave>();
        foreach (var line in values.Lines("musts"))
        {
            var at = line.IndexOf(Colon, StringComparison.Ordinal);
            if (at < 1 || at == line.Length - 1) return new Refusal("must", Spoken($"'{line}' says no more than a name: write what, a colon, and what it must be."), "bolt circle: 5 × 114.3");
            musts.Add(new(line[..at].Trim(), line[(at + 1)..].Trim()));
        }

        return musts;
    }

    private static WindowOf Quantity(WantedKind kind) => kind switch
    {
        WantedKind.Transmission => WindowOf.TopGearRatio,
        WantedKind.Overdrive => WindowOf.OverdriveRatio,
        WantedKind.TransferCase => WindowOf.LowRangeRatio,
        WantedKind.Axle => WindowOf.AxleRatio,
        WantedKind.Tyres => WindowOf.Circumference,
        WantedKind.Wheels => WindowOf.Width,
        _ => WindowOf.Length,
    };
}
