using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Papers.Cards;

namespace BuildLog.Tui.YardCards;

/// <summary>The card for a gearbox, or for an overdrive unit behind the one that is fitted.</summary>
internal static class GearboxCardWords
{
    public static IReadOnlyList<CardCount> Counts(GearboxCard card)
        => [.. ((int[])[GearboxCard.OutputTurns, GearboxCard.MoreOutputTurns]).Select(turns =>
        {
            var edges = card.Edges(turns);
            return new CardCount($"turn the output ({card.Wanted.Quantity})", FormattableString.Invariant($"{turns} output turns"), CardRanges.YesTurns(edges.Yes), CardRanges.NoTurns(edges.Possible));
        })];

    public static IEnumerable<string> Notes(GearboxCard card)
    {
        yield return "Select the gear, chalk both ends, turn the output, count the input. Then every other gear the same way, first to top.";
        yield return "An automatic counts nothing on the ground: its ratios need its teeth or its data sheet.";
        if (card.Wanted.SureWindow is null) yield return CardOfVehicle.NoSureYes(card.Wanted);
        yield return "Tags and casting numbers are hearsay: count.";
    }

    /// <param name="ours">The gearbox it would replace; null for none.</param>
    public static IEnumerable<CardBlank> Blanks(Transmission? ours) =>
    [
        new("counted, output : input"),
        new("other gears"),
        new("bell housing, bolt pattern", "", Ours(ours?.Front.BellHousing)),
        new("input spline", "", Ours(ours?.Front.InputSpline)),
        new("output flange or spline", "", Ours(ours?.Output)),
        new("bell face to output", "mm"),
        new("bell face to mount", "mm"),
        new("speedometer drive: cable / sensor"),
    ];

    private static string Ours(string? own) => own is null ? "" : $"ours {own}";
}
