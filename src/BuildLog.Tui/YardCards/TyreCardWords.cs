using System.Globalization;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.YardCards;

/// <summary>The card for tyres, with or without their wheels.</summary>
internal static class TyreCardWords
{
    public static IReadOnlyList<string> Cautions =>
    [
        Spoken("Level, clear ground, by hand at walking pace, somebody who can brake; nobody downhill; never under a car on a jack."),
        Spoken("A cut, cracked or unknown tyre is not pumped up. Age: over ten years is no (common practice)."),
    ];

    public static IReadOnlyList<CardWay> Ways(TyreCard card, Unit length)
        => [Way(card, length, Spoken("Standing under a vehicle"), loaded: true, TyreCard.Turns, TyreCard.MoreTurns), Way(card, length, Spoken("A loose wheel"), loaded: false, TyreCard.Turns)];

    public static IEnumerable<string> Notes(TyreCard card, Driveline driveline)
    {
        yield return Spoken("At its pressure: chalk tread and ground, roll straight, tape from mark to mark.");
        yield return Spoken("A loose wheel says less: where it says neither yes nor no, roll it under a vehicle.");
        if (card.Sizes.Count > 0) yield return Spoken($"Markings that would do, new: {string.Join(" ", card.Sizes)}");
        else if (driveline.DrivingTyres?.Size is not null) yield return Spoken("No listed marking near the fitted one lies in there: another axle or gear is the likelier cure.");
        yield return Spoken("A marking is hearsay too: tyres of one marking differ, and wear takes twice its depth off. Roll them.");
    }

    public static IEnumerable<CardBlank> Blanks(TyreCard card, Driveline driveline, UnitSystem units)
    {
        var (ours, hub) = (driveline.DrivingTyres, driveline.DrivingAxle?.Hub);
        var length = CardBlanks.OfLength(units).Symbol;
        return
        [
            new(new Later("rolled, turns : distance")),
            new(new Later("marking on the wall"), "", CardBlanks.Matching((Spoken("ours"), ours?.Size?.Designation))),
            new(new Later("load index, single"), "", CardBlanks.Matching((Spoken("at least"), card.LeastLoadIndex?.ToString(CultureInfo.InvariantCulture)))),
            new(new Later("speed symbol"), "", CardBlanks.Matching((Spoken("at least"), card.SlowestSymbol))),
            new(new Later("week and year of making")),
            new(new Later("tread left"), length),
            new(new Later("rim width"), "in", CardBlanks.Matching((Spoken("ours"), ours?.Wheel?.RimWidth is { } width ? Rounded.Value(width.Value, Units.Inch) : null))),
            new(new Later("offset"), length, CardBlanks.Matching((Spoken("ours"), CardBlanks.Length(ours?.Wheel?.Offset, units)))),
            new(new Later("bolt circle"), length, CardBlanks.Matching((Spoken("hubs"), CardBlanks.Circle(hub, units)), (Spoken("ours"), CardBlanks.Circle(ours?.Wheel?.Bolting, units)))),
        ];
    }

    private static CardWay Way(TyreCard card, Unit length, string how, bool loaded, params IReadOnlyList<int> counts) => new(how, Spoken("distance"),
    [
        .. counts.Select(turns =>
        {
            var edges = card.Edges(loaded, turns);
            return CardRanges.OfLength(Spoken($"{turns} wheel turns"), length, edges.Yes, edges.Possible);
        }),
    ]);
}
