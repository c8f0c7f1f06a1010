using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Layout;

/// <summary>Puts flow items on pages from top to bottom.</summary>
/// <remarks>
/// Items that keep with the next one gather in a run. A run that does not fit moves to a new page whole, unless it is longer than
/// a page: then it is placed item by item. An item taller than the room is split if it can be.
/// </remarks>
internal sealed class Paginator
{
    private const double Rounding = 0.01;

    /// <summary>How much of the space between blocks is left when it is set closer to save a page.</summary>
    private static readonly IReadOnlyList<double> Closer = [0.75, 0.5];

    /// <summary>A last page filled less than this is worth saving.</summary>
    private const double Little = 0.35;

    private readonly PageSetup setup;
    private readonly List<DrawnPage> pages = [];
    private readonly List<FlowItem> run = [];
    private Box body;
    private Pen pen;
    private double y;
    private bool fresh;

    private Paginator(PageSetup setup)
    {
        this.setup = setup;
        pen = StartPage();
    }

    /// <summary>Lays the blocks; where the last page would hold little, all is set closer if that saves it.</summary>
    public static IReadOnlyList<DrawnPage> Lay(PageSetup setup, IEnumerable<Block> blocks, PageFrame frame)
    {
        List<FlowItem> items = [.. blocks.SelectMany(block => block.Items(setup.Body.Width))];
        var laid = Placed(setup, items, 1);
        if (laid.pages.Count > 1 && laid.y - laid.body.Y < laid.body.Height * Little)
        {
            var closer = Closer.Select(spacing => Placed(setup, items, spacing)).FirstOrDefault(tried => tried.pages.Count < laid.pages.Count);
            laid = closer ?? laid;
        }

        laid.DrawFrames(frame);
        return laid.pages;
    }

    private static Paginator Placed(PageSetup setup, IEnumerable<FlowItem> items, double spacing)
    {
        var paginator = new Paginator(setup);
        foreach (var item in items) paginator.Take(spacing == 1 ? item : item with { SpaceBefore = item.SpaceBefore * spacing });
        paginator.PlaceRun();
        return paginator;
    }

    private Pen StartPage()
    {
        var page = new DrawnPage(setup.Width, setup.Height);
        body = pages.Count == 0 ? setup.FirstBody : setup.Body;
        pages.Add(page);
        (y, fresh) = (body.Y, true);
        return pen = new Pen(page.Operations);
    }

    private void Take(FlowItem item)
    {
        run.Add(item);
        if (!item.KeepWithNext) PlaceRun();
    }

    private void PlaceRun()
    {
        var fitsHere = y + HeightOfRun(fresh) <= body.Bottom + Rounding;
        var fitsNewPage = HeightOfRun(atTop: true) <= setup.Body.Height + Rounding;
        // A run longer than a page starts where it is, but not with a heading alone at the foot.
        var littleRoom = body.Bottom - y < body.Height / 3;
        if (!fresh && !fitsHere && (fitsNewPage || littleRoom)) StartPage();

        foreach (var item in run) Place(item);
        run.Clear();
    }

    private double HeightOfRun(bool atTop)
    {
        var height = 0.0;
        foreach (var item in run)
        {
            height += atTop ? item.FreshHeight : item.SpaceBefore + item.Height;
            atTop = false;
        }

        return height;
    }

    private void Place(FlowItem item)
    {
        if (!fresh) y += item.SpaceBefore;
        while (!Fits(item))
        {
            if (SplitHere(item) is { } parts)
            {
                Put(parts.Head with { Opens = item.Opens });
                item = parts.Tail with { Closes = item.Closes };
            }
            else if (fresh)
            {
                break;                                     // taller than a page and of one piece
            }

            StartPage();
        }

        Put(item);
    }

    private bool Fits(FlowItem item) => y + HeightOf(item) <= body.Bottom + Rounding;

    private double HeightOf(FlowItem item) => fresh ? item.FreshHeight : item.Height;

    /// <summary>Splits only what no page could hold whole, so that ordinary rows stay in one piece.</summary>
    private FlowSplit? SplitHere(FlowItem item)
    {
        if (item.FreshHeight <= setup.Body.Height) return null;

        return item.Split?.Invoke(body.Bottom - y - (HeightOf(item) - item.Height));
    }

    private void Put(FlowItem item)
    {
        if (fresh && item.RepeatOnNewPage is { } head)
        {
            head.Draw(pen, body.X, y);
            y += head.Height;
        }

        foreach (var tag in item.Opens) pen.Open(tag);
        item.Draw(pen, body.X, y);
        for (var i = 0; i < item.Closes; i++) pen.Close();
        y += item.Height;
        fresh = false;
    }

    /// <summary>The frames come last: only now is the number of pages known, and a reader that ignores tags meets the body first.</summary>
    private void DrawFrames(PageFrame frame)
    {
        foreach (var (i, page) in pages.Index())
        {
            var framePen = new Pen(page.Operations);
            framePen.Decoration(() => frame.Draw(framePen, setup, i + 1, pages.Count));
        }
    }
}
