using BuildLog.Sheet.Photos;

namespace BuildLog.Sheet.Drawing;

/// <summary>Writes operations onto a page; the only way text gets there, so all of it is made plain and laid in faces that have it.</summary>
internal sealed class Pen(List<Operation> page)
{
    public void Text(double x, double baseline, string text, TextStyle style, Align align = Align.Left, double width = 0)
    {
        var line = PlainText.Line(text);
        var start = align switch
        {
            Align.Right => x + width - style.VisibleWidthOf(line),
            Align.Centre => x + (width - style.VisibleWidthOf(line)) / 2,
            _ => x,
        };

        foreach (var run in style.Fonts.Runs(line))
        {
            page.Add(new DrawText(start, baseline, run.Face, run.Text, style.Size, style.Colour));
            start += run.Face.Width(run.Text, style.Size);
        }
    }

    public void Line(double x1, double y1, double x2, double y2, Stroke stroke) =>
        page.Add(new DrawLine([new(x1, y1), new(x2, y2)], stroke));

    /// <summary>A line through all the points.</summary>
    public void Line(IReadOnlyList<PagePoint> points, Stroke stroke) => page.Add(new DrawLine(points, stroke));

    /// <summary>As large as the box allows, in its middle; nothing is cut off.</summary>
    public void Photo(Box box, PreparedPhoto photo)
    {
        var scale = Math.Min(box.Width / photo.Width, box.Height / photo.Height);
        double width = photo.Width * scale, height = photo.Height * scale;
        page.Add(new DrawPhoto(new Box(box.X + (box.Width - width) / 2, box.Y + (box.Height - height) / 2, width, height), photo));
    }

    public void Fill(Box box, Colour colour) => page.Add(new DrawBox(box, colour, null));

    public void Frame(Box box, Colour? fill, Stroke? line) => page.Add(new DrawBox(box, fill, line));

    public void Bookmark(int level, string title, double y) => page.Add(new Bookmark(level, PlainText.Line(title), y));

    public void Open(TagInfo tag) => page.Add(new BeginTag(tag));

    public void Close() => page.Add(EndTag.Instance);

    public void Tagged(TagInfo tag, Action draw)
    {
        Open(tag);
        draw();
        Close();
    }

    /// <summary>Draws what is no part of the text: rules, fills, running heads.</summary>
    public void Decoration(Action draw) => Tagged(new TagInfo(Tag.Artifact), draw);
}
