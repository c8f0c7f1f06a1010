using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Papers.Cards;

namespace BuildLog.Tui.YardCards;

/// <summary>The card for an axle.</summary>
internal static class AxleCardWords
{
    public static IReadOnlyList<CardCount> Counts(AxleCard card)
        => [.. Way(card, "one wheel held (open differential)", Wheels.OneHeld), .. Way(card, "both wheels turned alike", Wheels.Together)];

    public static IEnumerable<string> Notes(AxleCard card)
    {
        yield return "First: turn one wheel, look at the other. It turns backwards: open, hold it. It turns the same way: locked or limited slip, turn both.";
        if (card.Wanted.SureWindow is null) yield return CardOfVehicle.NoSureYes(card.Wanted);
        if (card.Teeth.Count > 0) yield return $"Teeth that would do{(card.Hub == 1 ? "" : $", with {Rounded.Exact(card.Hub)} in the hubs")}: {string.Join(" ", card.Teeth)}";
        yield return "Tags and stampings are hearsay: count.";
    }

    /// <param name="ours">The axle it would replace; null for none.</param>
    public static IEnumerable<CardBlank> Blanks(Axle? ours) =>
    [
        new("counted, wheel : propshaft"),
        new("teeth, ring / pinion"),
        new("flange to flange", "mm", Ours(ours?.HubFaces?.Value)),
        new("perch to perch", "mm", Ours(ours?.Perches?.Value)),
        new("bolt circle", "", ours?.Hub is { Studs: { } studs, PitchCircle: { } circle } ? FormattableString.Invariant($"ours {studs} x {Rounded.Value(circle.Value, Units.Millimetre)}") : ""),
        new("pinion flange or spline", "", ours?.PinionFlange is { } flange ? $"ours {flange}" : ""),
        new("parking brake: cable / drum / none"),
    ];

    private static IEnumerable<CardCount> Way(AxleCard card, string how, Wheels wheels)
        => ((int[])[AxleCard.WheelTurns, AxleCard.MoreWheelTurns]).Select(turns =>
        {
            var edges = card.Edges(wheels, turns);
            return new CardCount(how, FormattableString.Invariant($"{turns} wheel turns"), CardRanges.YesTurns(edges.Yes), CardRanges.NoTurns(edges.Possible));
        });

    private static string Ours(Measured? own) => own is null ? "" : $"ours {Rounded.Value(own, Units.Millimetre)}";
}
