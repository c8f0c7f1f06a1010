using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;
using BuildLog.Sheet.Regions;

namespace BuildLog.Sheet.Papers.Cards;

/// <summary>The card: what is wanted, the counts, how to count, boxes to fill in, cautions; small enough for one page of A6.</summary>
internal static class YardCardPaper
{
    private static string Name => Spoken("yard card");
    private static string NoSureYes => Spoken("none is sure");

    private static readonly TableLook Counts = new() { PadX = 2, PadY = 1, KeepTogether = true };

    public static DrawnDocument Draw(YardCard card)
    {
        var (about, printed, shop) = (Missing.OrWords(card.About), card.PrintedOn?.Trim() ?? "", card.ShopName?.Trim() ?? "");
        var type = CardType.For(card.Paper);
        return new DrawnDocument(PlainPaper.InfoOf(card, Name), Paginator.Lay(PageSetup.Of(card.Paper),
        [
            new TitleBand(Name.ToUpperInvariant(), printed),
            new Paragraph(Heading(Missing.OrWords(card.Part), about), type.Title) { Tag = Tag.H1, BookmarkLevel = 0, SpaceBefore = type.Gap },
            .. Texts(card.Wanted, type.Strong, type),
            .. card.Ways.Select(way => Counting(way, type)),
            .. card.Ways.Count == 0 ? (Block[])[Missing.Paragraph] : [new Paragraph(Spoken("Between yes and no: count further."), type.Body) { SpaceBefore = 1 }],
            .. Texts(card.Notes, type.Body, type),
            .. card.Blanks.Count == 0 ? (Block[])[] : [Boxes(card.Blanks, type)],
            .. Texts(card.Cautions, type.Strong, type),
        ],
        new PageFrame(about, shop, printed, Name)));
    }

    private static string Heading(string part, string about) => Spoken($"{char.ToUpperInvariant(part[0])}{part[1..]} for {about}");

    private static IEnumerable<Block> Texts(IReadOnlyList<string> texts, TextStyle style, CardType type)
        => texts.Select((text, k) => new Paragraph(text, style) { SpaceBefore = k == 0 ? type.Gap : 1 });

    private static Table Counting(CardWay way, CardType type) => new(
        [new(way.How, 1.35), new(Spoken($"Yes: {way.Counted}"), 1.1), new(Spoken("No"), 1.35)],
        [.. way.Ranges.Select(range => (IReadOnlyList<Cell>)
            [new(new CellText(range.Turns, type.Body)), new(new CellText(range.Yes ?? NoSureYes, range.Yes is null ? type.Body : type.Strong)), new(new CellText(range.No, type.Body))])],
        Counts with { Head = type.Head })
    {
        SpaceBefore = type.Gap,
    };

    private static Table Boxes(IReadOnlyList<CardBlank> blanks, CardType type) => new(
        [new(Spoken("To look at"), 1.3), new(Spoken("To match"), 1.1), new(Spoken("Found"), 1.2, Align.Right)],
        [.. blanks.Select(blank => (IReadOnlyList<Cell>)
            [new(new CellText(blank.What, type.Body)), new(new CellText(blank.Must, type.Strong)), new(new CellText(blank.Unit, type.Body))])],
        new TableLook { PadX = 2, PadY = 1.2, LeastRowHeight = type.BoxHeight, ColumnRules = true, Head = type.Head })
    {
        SpaceBefore = type.Gap,
    };
}
