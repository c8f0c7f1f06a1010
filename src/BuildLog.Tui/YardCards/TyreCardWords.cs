using System.Globalization;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Papers.Cards;

namespace BuildLog.Tui.YardCards;

/// <summary>The card for tyres, with or without their wheels.</summary>
internal static class TyreCardWords
{
    public static readonly IReadOnlyList<string> Cautions =
    [
        "Level, clear ground, by hand at walking pace, somebody who can brake; nobody downhill; never under a car on a jack.",
        "A cut, cracked or unknown tyre is not pumped up. Age: over ten years is no (common practice).",
    ];

    public static IReadOnlyList<CardWay> Ways(TyreCard card)
        => [Way(card, "Standing under a vehicle", loaded: true, TyreCard.Turns, TyreCard.MoreTurns), Way(card, "A loose wheel", loaded: false, TyreCard.Turns)];

    public static IEnumerable<string> Notes(TyreCard card, Driveline driveline)
    {
        yield return "At its pressure: chalk tread and ground, roll straight, tape from mark to mark.";
        yield return "A loose wheel says less: where it says neither yes nor no, roll it under a vehicle.";
        if (card.Sizes.Count > 0) yield return $"Markings that would do, new: {string.Join(" ", card.Sizes)}";
        else if (driveline.DrivingTyres?.Size is not null) yield return "No listed marking near the fitted one lies in there: another axle or gear is the likelier cure.";
        yield return "A marking is hearsay too: tyres of one marking differ, and wear takes twice its depth off. Roll them.";
    }

    public static IEnumerable<CardBlank> Blanks(TyreCard card, Driveline driveline)
    {
        var (ours, hub) = (driveline.DrivingTyres, driveline.DrivingAxle?.Hub);
        return
        [
            new("rolled, turns : distance"),
            new("marking on the wall", "", CardBlanks.Matching(("ours", ours?.Size?.Designation))),
            new("load index, single", "", CardBlanks.Matching(("at least", card.LeastLoadIndex?.ToString(CultureInfo.InvariantCulture)))),
            new("speed symbol", "", CardBlanks.Matching(("at least", card.SlowestSymbol))),
            new("week and year of making"),
            new("tread left", "mm"),
            new("rim width", "in", CardBlanks.Matching(("ours", ours?.Wheel?.RimWidth is { } width ? Rounded.Value(width.Value, Units.Inch) : null))),
            new("offset", "mm", CardBlanks.Matching(("ours", CardBlanks.Millimetres(ours?.Wheel?.Offset)))),
            new("bolt circle", "mm", CardBlanks.Matching(("hubs", CardBlanks.Circle(hub)), ("ours", CardBlanks.Circle(ours?.Wheel?.Bolting)))),
        ];
    }

    private static CardWay Way(TyreCard card, string how, bool loaded, params IReadOnlyList<int> counts) => new(how, "distance",
    [
        .. counts.Select(turns =>
        {
            var edges = card.Edges(loaded, turns);
            return CardRanges.OfMetres(FormattableString.Invariant($"{turns} wheel turns"), edges.Yes, edges.Possible);
        }),
    ]);
}
