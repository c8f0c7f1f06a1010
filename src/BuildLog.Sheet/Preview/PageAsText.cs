using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Preview;

/// <summary>Reads drawn pages back along their tags: headings, paragraphs, lists, tables and charts become pieces of text, decoration nothing.</summary>
internal sealed class PageAsText
{
    private readonly Stack<Tag> open = [];
    private readonly List<PreviewPiece> pieces = [];
    private readonly List<(Chart Chart, string Words)> charts = [];
    private TextTable? table;
    private int artifacts;
    private string text = "";

    private PageAsText() { }

    public static IReadOnlyList<PreviewPage> Of(DrawnDocument document)
    {
        var reader = new PageAsText();
        return [.. document.Pages.Select((page, i) => new PreviewPage(i + 1, reader.Read(page)))];
    }

    // Tags may stay open over a page's end, so one reader goes through all pages.
    private IReadOnlyList<PreviewPiece> Read(DrawnPage page)
    {
        pieces.Clear();
        foreach (var operation in page.Operations)
        {
            switch (operation)
            {
                case BeginTag { Info: var tag }:
                    Begin(tag);
                    break;
                case EndTag:
                    End();
                    break;
                case DrawText drawn when artifacts == 0 && !open.Contains(Tag.Figure):
                    text += drawn.Text;
                    break;
                default:
                    break;
            }
        }

        FlushText();
        FlushTable();
        FlushCharts();
        return [.. pieces];
    }

    private void Begin(TagInfo tag)
    {
        open.Push(tag.Tag);
        if (tag.Tag == Tag.Artifact) artifacts++;
        if (artifacts > 0) return;

        switch (tag.Tag)
        {
            case Tag.Table:
                FlushText();
                table = new TextTable();
                break;
            case Tag.TR:
                (table ??= new TextTable()).StartRow();
                break;
            case Tag.LBody when text.Length > 0:
                text += ' '; // after the dot of the list
                break;
            case Tag.Figure when tag.Chart is { } chart:
                charts.Add((chart, Shown(tag)));
                break;
            case Tag.Figure:
                Add(new PreviewText(Shown(tag), " "));
                break;
            default:
                break;
        }
    }

    private static string Shown(TagInfo figure) => $"[{figure.AlternativeText}]";

    private void End()
    {
        var tag = open.Pop();
        if (tag == Tag.Artifact) artifacts--;
        if (artifacts > 0 || tag == Tag.Artifact) return;

        switch (tag)
        {
            case Tag.H1:
                Add(new PreviewHeading(Taken(), '═'));
                break;
            case Tag.H2:
                Add(new PreviewHeading(Taken(), '─'));
                break;
            case Tag.TH or Tag.TD:
                table!.EndCell(Taken());
                break;
            case Tag.P when table is not null && (open.Contains(Tag.TD) || open.Contains(Tag.TH)):
                text += '\n';
                break;
            case Tag.P:
                FlushText();
                break;
            case Tag.LBody:
                Add(new PreviewText(Taken(), "  "));
                break;
            case Tag.THead:
                table!.EndHead();
                break;
            case Tag.Table:
                FlushTable();
                table = null;
                break;
            default:
                break;
        }
    }

    private void Add(PreviewPiece piece)
    {
        FlushCharts();
        pieces.Add(piece);
    }

    private void FlushText()
    {
        if (text.Trim().Length > 0) Add(new PreviewText(Taken()));
        text = "";
    }

    private void FlushTable()
    {
        if (table?.TakeRows() is { } rows) Add(new PreviewTable(rows));
    }

    private void FlushCharts()
    {
        if (charts.Count == 0) return;

        var together = new PreviewCharts([.. charts]);
        charts.Clear();
        pieces.Add(together);
    }

    private string Taken()
    {
        var taken = text.Trim();
        text = "";
        return taken;
    }
}
