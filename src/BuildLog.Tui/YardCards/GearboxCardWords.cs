using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Tui.Bench;

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

    public static IEnumerable<CardBlank> Blanks(Driveline driveline, UnitSystem units)
    {
        var (ours, engine) = (driveline.Transmission, driveline.Engine?.Rear);
        var length = CardBlanks.OfLength(units).Symbol;
        return
        [
            new("counted, output : input"),
            new("other gears"),
            new("bell housing, bolt pattern", "", CardBlanks.Matching(("engine", engine?.BellHousing), ("ours", ours?.Front.BellHousing))),
            new("input spline", "", CardBlanks.Matching(("disc", ours?.Front.DiscSpline), ("ours", ours?.Front.InputSpline))),
            new("input spigot", length, CardBlanks.Matching(("pilot", CardBlanks.Length(engine?.PilotBore, units)), ("ours", CardBlanks.Length(ours?.Front.Spigot, units)))),
            new("output flange or spline", "", CardBlanks.Matching(("ours", ours?.Output))),
            new("length, bell face to output", length),
            new("bell face to mount", length),
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
