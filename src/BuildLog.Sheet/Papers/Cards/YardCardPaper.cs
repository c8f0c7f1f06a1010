using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Fonts;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;
using BuildLog.Sheet.Regions;

namespace BuildLog.Sheet.Papers.Cards;

/// <summary>The card: wanted, counts, how, boxes to fill in, cautions; small enough for one page of A6.</summary>
internal static class YardCardPaper
{
    private static readonly TextStyle Title = new(SheetFonts.SemiBold, 11, Ink.Text, 1.2);
    private static readonly TextStyle Body = new(SheetFonts.Regular, 7, Ink.Text, 1.22);
    private static readonly TextStyle Strong = new(SheetFonts.SemiBold, 7, Ink.Text, 1.22);

    private static readonly TableLook Counts = new() { PadX = 2, PadY = 1, KeepTogether = true };
    private static readonly TableLook Writing = new() { PadX = 2, PadY = 1.5, LeastRowHeight = 12.5, ShowsHead = false, ColumnRules = true };

    public static DrawnDocument Draw(YardCard card)
    {
        var (about, part) = (Missing.OrWords(card.About), Missing.OrWords(card.Part));
        var frame = new PageFrame(about, card.ShopName?.Trim() ?? "", card.PrintedOn?.Trim() ?? "", "yard card");
        return new DrawnDocument(PlainPaper.InfoOf(card, "yard card"), Paginator.Lay(PageSetup.Of(card.Size),
        [
            new TitleBand("YARD CARD", card.PrintedOn?.Trim() ?? ""),
            new Paragraph($"{part} for {about}", Title) { Tag = Tag.H1, BookmarkLevel = 0, SpaceBefore = 3 },
            .. Texts(card.Wanted, Strong),
            .. card.Counts.Count == 0 ? (Block[])[Missing.Paragraph] : [new Table([new("Count", 1.5), new($"Yes, {Missing.OrWords(card.Counted)}", 1), new("No", 1.3)], [.. card.Counts.Select(Row)], Counts) { SpaceBefore = 4 }],
            new Paragraph("Between yes and no: count further.", Body) { SpaceBefore = 2 },
            .. Texts(card.Notes, Body),
            .. card.Blanks.Count == 0 ? (Block[])[] : [new Table([new("What", 1.6), new("Found", 1)], [.. card.Blanks.Select(Row)], Writing) { SpaceBefore = 4 }],
            .. Texts(card.Cautions, Strong),
        ],
        frame));
    }

    private static IEnumerable<Block> Texts(IReadOnlyList<string> texts, TextStyle style) => texts.Select((text, k) => new Paragraph(text, style) { SpaceBefore = k == 0 ? 3 : 1 });

    private static IReadOnlyList<Cell> Row(CardCount count) =>
    [
        new(new CellText($"{count.How}, {count.Turns}", Body)), Missing.CellOf(count.Yes ?? "no sure yes", Strong), new(new CellText(count.No, Body)),
    ];

    private static IReadOnlyList<Cell> Row(CardBlank blank) =>
    [
        new(new CellText(blank.Must.Length == 0 ? blank.What : $"{blank.What} ({blank.Must})", Body)),
        blank.Unit.Length == 0 ? new Cell([]) : new Cell(new CellText(blank.Unit, Body)),
    ];
}
