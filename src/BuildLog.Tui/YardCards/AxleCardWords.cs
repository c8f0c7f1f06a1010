using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.YardCards;

/// <summary>The card for an axle.</summary>
internal static class AxleCardWords
{
    public static IReadOnlyList<string> Cautions =>
    [
        Spoken("A lifted vehicle: stands on firm ground, never under a car on a jack; wheels on the ground chocked; key out; not alone."),
        Spoken("A lifted axle's handbrake holds nothing. Do not lever one wheel against a limited slip: lift both."),
    ];

    public static IReadOnlyList<CardWay> Ways(AxleCard card)
        => [Way(card, Spoken("One wheel held (open differential)"), Wheels.OneHeld), Way(card, Spoken("Both wheels turned alike"), Wheels.Together)];

    public static IEnumerable<string> Notes(AxleCard card)
    {
        yield return Spoken("First: turn one wheel, look at the other. It turns backwards: open, hold it. It turns the same way: locked or limited slip, turn both.");
        if (Teeth(card) is { Length: > 0 } teeth) yield return teeth;
        yield return Spoken("Tags and stampings are hearsay: count.");
    }

    /// <summary>What a four-wheel drive asks besides; nothing where one axle drives.</summary>
    /// <param name="driveline">The vehicle's.</param>
    /// <param name="position">Where the axle goes that the card is for.</param>
    public static IEnumerable<string> BothAxles(Driveline driveline, Position position)
    {
        if (!DrivenWheels.JoinsBothAxles(driveline)) yield break;

        var other = position == Position.FrontAxle ? Spoken("rear axle") : Spoken("front axle");
        yield return position == driveline.DrivingPosition
            ? Spoken($"Four-wheel drive: both axles have to be changed, front and rear alike. Take the {other} of the same vehicle too, or its like, and count both.")
            : Spoken($"Four-wheel drive: this window matches the {other} as it is now. Whoever changes that one too changes both alike.");
    }

    public static IEnumerable<CardBlank> Blanks(Driveline driveline, Position position, UnitSystem units)
    {
        var isFront = position == Position.FrontAxle;
        var (ours, hanging) = isFront ? (driveline.FrontAxle, driveline.FrontHanging) : (driveline.RearAxle, driveline.RearHanging);
        var shaft = FittedShaft.Of(driveline).FirstOrDefault(shaft => shaft.AxlePosition == position)?.Shaft;
        var length = CardBlanks.OfLength(units).Symbol;
        return
        [
            new(new Later("counted, wheel : propshaft")),
            new(new Later("teeth, ring / pinion")),
            new(new Later("flange to flange (track)"), length, CardBlanks.Matching((Spoken("ours"), CardBlanks.Length(ours?.HubFaces, units)))),
            new(new Later("perch to perch"), length, CardBlanks.Matching((Spoken("springs"), CardBlanks.Length(hanging.Springs, units)), (Spoken("ours"), CardBlanks.Length(ours?.Perches, units)))),
            new(new Later("bolt circle"), length, CardBlanks.Matching((Spoken("wheels"), CardBlanks.Circle(driveline.Tyres?.On(position)?.Wheel?.Bolting, units)), (Spoken("ours"), CardBlanks.Circle(ours?.Hub, units)))),
            new(new Later("pinion flange or spline"), "", CardBlanks.Matching((Spoken("propshaft"), shaft?.RearEnd), (Spoken("ours"), ours?.PinionFlange))),
            new(new Later("parking brake: cable / drum / none")),
        ];
    }

    private static string Teeth(AxleCard card)
    {
        var hubs = card.Hub == 1 ? "" : Spoken($", with {Rounded.Exact(card.Hub)} in the hubs");
        var (sure, perhaps) = (string.Join(" ", card.Teeth) + (card.LeavesOut ? Spoken(" and others") : ""), string.Join(" ", card.Perhaps));
        return (card.Teeth.Count, card.Perhaps.Count) switch
        {
            (0, 0) => "",
            (0, _) => Spoken($"Teeth that perhaps would do{hubs}: {perhaps}"),
            (_, 0) => Spoken($"Teeth that would do{hubs}: {sure}"),
            _ => Spoken($"Teeth that would do{hubs}: {sure}; perhaps: {perhaps}"),
        };
    }

    private static CardWay Way(AxleCard card, string how, Wheels wheels) => new(how, Spoken("propshaft turns"),
    [
        .. ((int[])[AxleCard.WheelTurns, AxleCard.MoreWheelTurns]).Select(turns =>
        {
            var edges = card.Edges(wheels, turns);
            return CardRanges.OfTurns(Spoken($"{turns} wheel turns"), edges.Yes, edges.Possible);
        }),
    ]);
}
