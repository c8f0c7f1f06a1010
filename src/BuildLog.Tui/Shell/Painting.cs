using Terminal.Gui.ViewBase;
using TgAttribute = Terminal.Gui.Drawing.Attribute;

namespace BuildLog.Tui.Shell;

/// <summary>Writes whole runs of text: the library measures every write, so one write per colour is what keeps keys quick.</summary>
internal static class Painting
{
    /// <summary>Writes a line into exactly <paramref name="width"/> cells, in the tone of each run.</summary>
    public static void Paint(this View view, int x, int y, int width, TextLine line)
    {
        var left = width;
        for (var i = 0; i < line.Runs.Count && left > 0; i++)
        {
            var run = line.Runs[i];
            var isLast = i == line.Runs.Count - 1;
            var text = isLast ? TextFit.Exactly(run.Text, left) : TextFit.Cut(run.Text, left);
            view.Paint(x + width - left, y, text, Theme.Palette.Of(run.Tone));
            left -= TextFit.Width(text);
        }

        if (left > 0) view.Paint(x + width - left, y, new string(' ', left), Theme.Palette.Plain);
    }

    public static void Paint(this View view, int x, int y, string text, TgAttribute attribute)
    {
        view.SetAttribute(attribute);
        view.AddStr(x, y, Characters.Shown(text));
    }

    public static void Paint(this View view, int x, int y, string text, Tone tone) => view.Paint(x, y, text, Theme.Palette.Of(tone));

    /// <summary>Writes at the right end of a row.</summary>
    public static void PaintAtEnd(this View view, int y, int width, string text, Tone tone) => view.Paint(width - TextFit.Width(text), y, text, tone);

    /// <summary>Empties the rows from <paramref name="first"/> to the bottom of the view.</summary>
    public static void PaintEmptyRows(this View view, int first)
    {
        var blank = new string(' ', Math.Max(0, view.Viewport.Width));
        for (var y = first; y < view.Viewport.Height; y++) view.Paint(0, y, blank, Theme.Palette.Plain);
    }
}
