using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Papers.Cards;

namespace BuildLog.Tui.YardCards;

/// <summary>The card for a gearbox.</summary>
internal static class GearboxCardWords
{
    public static readonly IReadOnlyList<string> Cautions =
    [
        "Strapped or cradled before it is turned; two to lift it. Turn by hand, fingers clear of open selectors and gears.",
        "Still in a lifted vehicle: stands on firm ground, never under a car on a jack; wheels on the ground chocked; key out; not alone.",
    ];

    public static IReadOnlyList<CardWay> Ways(GearboxCard card) => [.. card.Gears.Select(Way)];

    public static IReadOnlyList<string> Notes =>
    [
        "Select the gear, chalk both ends, turn the output, count the input; then every other gear the same way.",
        "An automatic counts nothing on the ground: it needs its teeth or its maker's data.",
        "Tags and casting numbers are hearsay: count.",
    ];

    public static IEnumerable<CardBlank> Blanks(Driveline driveline)
    {
        var (ours, engine) = (driveline.Transmission, driveline.Engine?.Rear);
        return
        [
            new("counted, output : input"),
            new("other gears"),
            new("bell housing, bolt pattern", "", CardBlanks.Matching(("engine", engine?.BellHousing), ("ours", ours?.Front.BellHousing))),
            new("input spline", "", CardBlanks.Matching(("disc", ours?.Front.DiscSpline), ("ours", ours?.Front.InputSpline))),
            new("input spigot", "mm", CardBlanks.Matching(("pilot", CardBlanks.Millimetres(engine?.PilotBore)), ("ours", CardBlanks.Millimetres(ours?.Front.Spigot)))),
            new("output flange or spline", "", CardBlanks.Matching(("ours", ours?.Output))),
            new("length, bell face to output", "mm"),
            new("bell face to mount", "mm"),
            new("speedometer: cable / sensor / none"),
        ];
    }

    private static CardWay Way(WindowOfPart gear) => new(char.ToUpperInvariant(gear.Quantity[0]) + gear.Quantity[1..], "input turns",
    [
        .. ((int[])[GearboxCard.OutputTurns, GearboxCard.MoreOutputTurns]).Select(turns =>
        {
            var edges = GearboxCard.Edges(gear, turns);
            return CardRanges.OfTurns(FormattableString.Invariant($"{turns} output turns"), edges.Yes, edges.Possible);
        }),
    ]);
}
