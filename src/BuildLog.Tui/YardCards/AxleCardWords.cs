using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.YardCards;

/// <summary>The card for an axle.</summary>
internal static class AxleCardWords
{
    public static readonly IReadOnlyList<string> Cautions =
    [
        "A lifted vehicle: stands on firm ground, never under a car on a jack; wheels on the ground chocked; key out; not alone.",
        "A lifted axle's handbrake holds nothing. Do not lever one wheel against a limited slip: lift both.",
    ];

    public static IReadOnlyList<CardWay> Ways(AxleCard card)
        => [Way(card, "One wheel held (open differential)", Wheels.OneHeld), Way(card, "Both wheels turned alike", Wheels.Together)];

    public static IEnumerable<string> Notes(AxleCard card)
    {
        yield return "First: turn one wheel, look at the other. It turns backwards: open, hold it. It turns the same way: locked or limited slip, turn both.";
        if (card.Teeth.Count > 0) yield return $"Teeth that would do{(card.Hub == 1 ? "" : $", with {Rounded.Exact(card.Hub)} in the hubs")}: {string.Join(" ", card.Teeth)}";
        yield return "Tags and stampings are hearsay: count.";
    }

    public static IEnumerable<CardBlank> Blanks(Driveline driveline, UnitSystem units)
    {
        var ours = driveline.DrivingAxle;
        var hanging = driveline.DrivingPosition == Position.FrontAxle ? driveline.FrontHanging : driveline.RearHanging;
        var shaft = FittedShaft.Of(driveline).FirstOrDefault(shaft => shaft.AxlePosition == driveline.DrivingPosition)?.Shaft;
        var length = CardBlanks.OfLength(units).Symbol;
        return
        [
            new("counted, wheel : propshaft"),
            new("teeth, ring / pinion"),
            new("flange to flange (track)", length, CardBlanks.Matching(("ours", CardBlanks.Length(ours?.HubFaces, units)))),
            new("perch to perch", length, CardBlanks.Matching(("springs", CardBlanks.Length(hanging.Springs, units)), ("ours", CardBlanks.Length(ours?.Perches, units)))),
            new("bolt circle", length, CardBlanks.Matching(("wheels", CardBlanks.Circle(driveline.DrivingTyres?.Wheel?.Bolting, units)), ("ours", CardBlanks.Circle(ours?.Hub, units)))),
            new("pinion flange or spline", "", CardBlanks.Matching(("propshaft", shaft?.RearEnd), ("ours", ours?.PinionFlange))),
            new("parking brake: cable / drum / none"),
        ];
    }

    private static CardWay Way(AxleCard card, string how, Wheels wheels) => new(how, "propshaft turns",
    [
        .. ((int[])[AxleCard.WheelTurns, AxleCard.MoreWheelTurns]).Select(turns =>
        {
            var edges = card.Edges(wheels, turns);
            return CardRanges.OfTurns(FormattableString.Invariant($"{turns} wheel turns"), edges.Yes, edges.Possible);
        }),
    ]);
}
