using System.Globalization;
using BuildLog.Tui.Shell;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>A chart in characters, cell by cell: what is put later stands over what was there. It goes onto a screen or into a text.</summary>
internal sealed class ChartCells(int width, int height)
{
    private readonly (string? Sign, Tone Tone)[] cells = new (string?, Tone)[width * height];

    public int Width => width;

    public void Put(int x, int y, string text, Tone tone)
    {
        if (y < 0 || y >= height) return;
        var graphemes = StringInfo.GetTextElementEnumerator(TextFit.Printable(text));
        while (graphemes.MoveNext())
        {
            var sign = graphemes.GetTextElement();
            var taken = TextFit.Width(sign);
            if (taken > 0 && x >= 0 && x + taken <= width) cells[(y * width) + x] = (sign, tone);
            for (var k = 1; k < taken && x + k < width; k++) cells[(y * width) + x + k] = ("", tone); // the rest of a wide sign
            x += taken;
        }
    }

    public IReadOnlyList<TextLine> Lines => [.. Enumerable.Range(0, height).Select(Line)];

    public void PaintOn(View view, int top = 0)
    {
        for (var y = 0; y < height; y++) view.Paint(0, top + y, width, Line(y));
    }

    // Cells of one tone go together: each change of it is a write of its own.
    private TextLine Line(int y)
    {
        var runs = new List<TextRun>();
        for (var x = 0; x < width; x++)
        {
            var (sign, tone) = cells[(y * width) + x] is { Sign: { } put } cell ? (put, cell.Tone) : (" ", runs.Count > 0 ? runs[^1].Tone : Tone.Plain);
            if (runs.Count > 0 && runs[^1].Tone == tone) runs[^1] = runs[^1] with { Text = runs[^1].Text + sign };
            else runs.Add(new(sign, tone));
        }

        return new(runs);
    }
}
