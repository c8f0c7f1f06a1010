using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;
using BuildLog.Sheet.Regions;

namespace BuildLog.Sheet.Papers;

/// <summary>The frame that all papers share: the band with the paper's name, what it is about, the blocks, and page x of y.</summary>
internal static class PlainPaper
{
    /// <param name="content">Whose paper.</param>
    /// <param name="name">What kind of paper, in small letters: "propshaft order".</param>
    /// <param name="blocks">Below the title.</param>
    public static DrawnDocument Draw(PaperContent content, string name, IEnumerable<Block> blocks)
    {
        var (about, printed) = (Missing.OrWords(content.About), PrintedOf(content));
        var shop = content.ShopName?.Trim() ?? "";
        Block[] title =
        [
            new TitleBand(name.ToUpperInvariant(), printed),
            new Paragraph(about, TypeScale.VehicleName) { Tag = Tag.H1, BookmarkLevel = 0, SpaceBefore = 8 },
            .. shop.Length == 0 ? (Block[])[] : [new Paragraph(shop, TypeScale.ShopName)],
        ];
        var pages = Paginator.Lay(PageSetup.Of(content.Paper), [.. title, .. blocks], new PageFrame(about, shop, printed, name));
        return new DrawnDocument(InfoOf(content, name), pages);
    }

    public static DocumentInfo InfoOf(PaperContent content, string name)
    {
        var about = PlainText.Line(Missing.OrWords(content.About));
        return new DocumentInfo
        {
            Title = $"{about}: {name}",
            Author = PlainText.Line(content.ShopName?.Trim() ?? ""),
            Subject = Spoken($"{char.ToUpperInvariant(name[0])}{name[1..]} for {about}"),
            Keywords = name,
            Language = Gearing.Languages.Language.Spoken.Tag,
            Creator = "BuildLog",
            Created = content.Created,
            Id = content.Id,
        };
    }

    private static string PrintedOf(PaperContent content) =>
        string.IsNullOrWhiteSpace(content.PrintedOn) ? Spoken($"printing date {Missing.Words}") : Spoken($"printed {content.PrintedOn}");
}
