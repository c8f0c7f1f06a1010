using BuildLog.Sheet.Papers.Cards;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.YardCards;

/// <summary>A yard card on forty columns, for a narrow printer or a telephone.</summary>
internal static class CardText
{
    private const int Columns = 40;

    public static IReadOnlyList<string> Of(YardCard card) => [.. Lines(card).SelectMany(line => TextFit.Wrap(line, Columns, 2))];

    private static IEnumerable<string> Lines(YardCard card)
    {
        yield return Spoken($"YARD CARD  {card.Part} for {card.About}");
        foreach (var wanted in card.Wanted) yield return wanted;
        foreach (var way in card.Ways)
        {
            yield return "";
            yield return way.How.ToUpperInvariant();
            foreach (var range in way.Ranges)
            {
                yield return $"{range.Turns}, {way.Counted}:";
                yield return Spoken($"  yes     {range.Yes ?? Spoken("none is sure")}");
                yield return Spoken($"  no      {range.No}");
                yield return Spoken("  between count further");
            }
        }

        yield return "";
        foreach (var note in card.Notes) yield return note;
        yield return "";
        foreach (var blank in card.Blanks) yield return $"{blank.What} ____ {blank.Unit}".TrimEnd() + (blank.Must.Length == 0 ? "" : $" ({blank.Must})");
        yield return "";
        foreach (var caution in card.Cautions) yield return caution;
    }
}
