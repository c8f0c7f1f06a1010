using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Papers.Cards;

namespace BuildLog.Tui.YardCards;

/// <summary>The card for tyres, with or without their wheels.</summary>
internal static class TyreCardWords
{
    public static IReadOnlyList<CardCount> Counts(TyreCard card)
        => [.. ((int[])[1, TyreCard.Turns]).Select(turns =>
        {
            var edges = card.Loose(turns);
            return new CardCount("a loose wheel, rolled straight", turns == 1 ? "one turn" : FormattableString.Invariant($"{turns} turns"), CardRanges.YesMetres(edges.Yes), CardRanges.NoMetres(edges.Possible));
        })];

    public static IEnumerable<string> Notes(TyreCard card)
    {
        yield return "Pump it up, chalk the tread and the ground, roll it straight, measure from mark to mark.";
        if (card.Sizes.Count > 0) yield return $"Sizes that would do: {string.Join(" ", card.Sizes)}";
        if (card.Wanted.SureWindow is null) yield return CardOfVehicle.NoSureYes(card.Wanted);
        yield return "Two sizes of one marking differ by a per cent or two, and wear takes twice its depth: roll it.";
    }

    /// <param name="ours">The set it would replace; null for none.</param>
    public static IEnumerable<CardBlank> Blanks(TyreSet? ours) =>
    [
        new("marking on the wall", "", ours?.Size is { } size ? $"ours {size.Designation}" : ""),
        new("load index / speed symbol", "", ours?.Size is { LoadIndex: { } load } held ? FormattableString.Invariant($"ours {load}{held.SpeedSymbol}") : ""),
        new("week and year of making"),
        new("tread left", "mm"),
        new("rim width", "in", ours?.Wheel?.RimWidth is { } width ? $"ours {Rounded.Value(width.Value, Units.Inch)}" : ""),
        new("offset", "mm", ours?.Wheel?.Offset is { } offset ? $"ours {Rounded.Value(offset.Value, Units.Millimetre)}" : ""),
        new("bolt circle", "", ours?.Wheel?.Bolting is { Studs: { } studs, PitchCircle: { } circle } ? FormattableString.Invariant($"ours {studs} x {Rounded.Value(circle.Value, Units.Millimetre)}") : ""),
        new("seat: cone / ball / flat"),
    ];
}
