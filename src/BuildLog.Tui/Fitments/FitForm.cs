using BuildLog.Data.Components;
using BuildLog.Data.Days;
using BuildLog.Data.Fitments;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Parts;

namespace BuildLog.Tui.Fitments;

/// <summary>When, at what odometer reading and why a part was fitted or taken off.</summary>
public sealed record FittingFacts(LooseDay Day, string Odometer, string Reason);

/// <summary>Asks for a fitting: of a new part with its numbers, of one from the shelf, or for taking one off.</summary>
public static class FitForm
{
    /// <summary>What the record refuses because of the day something was fitted.</summary>
    internal static readonly IReadOnlyList<string> RefusedOfDay = ["date", "fitted-elsewhere", "place-taken"];

    /// <summary>A new part and its fitting, stored together or not at all.</summary>
    /// <param name="position">Where.</param>
    /// <param name="vehicle">The vehicle it goes to.</param>
    /// <param name="today">Today.</param>
    /// <param name="save">Stores both.</param>
    /// <param name="effect">Says what the part would do.</param>
    public static Form New(Position position, Vehicle vehicle, DateOnly today, Action<Component, FittingFacts> save, Func<Component, IReadOnlyList<string>> effect)
    {
        var entries = PartEntries.For(position);
        return new()
        {
            Title = Spoken($"New {position.InWords()} for {vehicle.Name}"),
            HelpPage = "Parts",
            SaveCaption = Spoken("Fit"),
            Entries = [.. entries.Entries(entries.New()), .. Facts(today, vehicle.OdometerUnit)],
            Echo = values => entries.Said(values, entries.New(), effect),
            Save = values => Checks.Try(() =>
            {
                var part = entries.New();
                entries.Apply(values, part);
                save(part, FactsOf(values, today));
            }),
        };
    }

    /// <summary>A part that is in the record already.</summary>
    /// <param name="part">What is fitted.</param>
    /// <param name="nowOn">The vehicle it sits on until then; null for the shelf.</param>
    /// <param name="vehicle">The vehicle it goes to.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="save">Stores the fitting.</param>
    public static Form Known(Component part, string? nowOn, Vehicle vehicle, DateOnly today, Action<FittingFacts> save) => new()
    {
        Title = Spoken($"Fit {part.Name} to {vehicle.Name}"),
        HelpPage = "Parts",
        SaveCaption = Spoken("Fit"),
        Echo = _ => [nowOn is null ? Spoken($"{part.Name} is on the shelf.") : Spoken($"{part.Name} is now on {nowOn}.")],
        Entries = [.. Facts(today, vehicle.OdometerUnit)],
        Save = values => Checks.Try(() => save(FactsOf(values, today))),
    };

    /// <summary>Taking a part off with nothing in its place.</summary>
    /// <param name="part">What comes off.</param>
    /// <param name="vehicle">The vehicle it comes off.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="save">Stores it.</param>
    /// <param name="effect">What its place being empty does.</param>
    public static Form Off(Component part, Vehicle vehicle, DateOnly today, Action<FittingFacts> save, Func<IReadOnlyList<string>> effect) => new()
    {
        Title = Spoken($"Take {part.Name} off {vehicle.Name}"),
        HelpPage = "Parts",
        SaveCaption = Spoken("Take off"),
        Echo = _ => effect(),
        Entries = [.. Facts(today, vehicle.OdometerUnit)],
        Save = values => Checks.Try(() => save(FactsOf(values, today))),
    };

    private static IEnumerable<Entry> Facts(DateOnly today, OdometerUnit unit) =>
    [
        DayEntry.Past("day", Spoken("Date"), today, Spoken("today"), Spoken("today, 3 May or, as far as known, spring 2024")) with { AnswersFor = RefusedOfDay },
        OdometerEntry.Of("odometer", Spoken("Odometer"), unit),
        new TextEntry("reason", Spoken("Why")) { IsRemembered = true, Hint = Spoken("one line for later years") },
    ];

    private static FittingFacts FactsOf(FormValues values, DateOnly today)
        => new(DayEntry.In(values, "day", today), values["odometer"], values["reason"]);
}
