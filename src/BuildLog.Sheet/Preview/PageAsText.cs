using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Preview;

/// <summary>Reads drawn pages back along their tags: headings, paragraphs, lists and tables become lines, charts their words, decoration nothing.</summary>
internal sealed class PageAsText(int width)
{
    private readonly Stack<Tag> open = [];
    private readonly List<string> lines = [];
    private TextTable? table;
    private int artifacts;
    private string text = "";

    public static IReadOnlyList<PreviewPage> Of(DrawnDocument document, int width)
    {
        var reader = new PageAsText(width);
        return [.. document.Pages.Select((page, i) => new PreviewPage(i + 1, reader.Read(page)))];
    }

    // Tags may stay open over a page's end, so one reader goes through all pages.
    private List<string> Read(DrawnPage page)
    {
        lines.Clear();
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
        return [.. lines.SkipWhile(line => line.Length == 0)];
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
            case Tag.Figure:
                AddWrapped($"[{tag.AlternativeText}]", "", " ");
                break;
            default:
                break;
        }
    }

    private void End()
    {
        var tag = open.Pop();
        if (tag == Tag.Artifact) artifacts--;
        if (artifacts > 0 || tag == Tag.Artifact) return;

        switch (tag)
        {
            case Tag.H1:
                AddHeading('═');
                break;
            case Tag.H2:
                AddHeading('─');
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
                AddWrapped(Taken(), "", "  ");
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

    private void AddHeading(char underline)
    {
        if (lines.Count > 0) lines.Add("");
        var heading = Taken();
        AddWrapped(heading, "", "");
        lines.Add(new string(underline, Math.Min(width, heading.Length)));
    }

    private void FlushText()
    {
        if (text.Trim().Length > 0) AddWrapped(Taken(), "", "");
        text = "";
    }

    private void FlushTable()
    {
        if (table is not null) lines.AddRange(table.TakeLines(width));
    }

    private string Taken()
    {
        var taken = text.Trim();
        text = "";
        return taken;
    }

    private void AddWrapped(string paragraph, string first, string further) => lines.AddRange(TextWrap.Lines(paragraph, width, first, further));
}
