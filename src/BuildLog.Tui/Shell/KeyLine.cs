using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>The bottom line: the keys that work now, always on screen.</summary>
internal sealed class KeyLine : View
{
    private IReadOnlyList<KeyHint> hints = [];
    private string meanwhile = "";

    public KeyLine()
    {
        Height = 1;
        Width = Dim.Fill();
        Y = Pos.AnchorEnd(1);
    }

    public void Show(IReadOnlyList<KeyHint> newHints)
    {
        hints = newHints;
        SetNeedsDraw();
    }

    /// <summary>Says something in place of the keys while none of them works; empty when they do again.</summary>
    public void SayMeanwhile(string text)
    {
        if (meanwhile == text) return;
        meanwhile = text;
        SetNeedsDraw();
    }

    /// <summary>Cells the hints take.</summary>
    public static int WidthOf(IEnumerable<KeyHint> hints) => hints.Sum(hint => TextFit.Width(hint.Key) + TextFit.Width(hint.Does) + 3);

    /// <summary>Writes hints from a column on.</summary>
    /// <returns>The first column after them.</returns>
    public static int Paint(View view, int x, IEnumerable<KeyHint> hints)
    {
        foreach (var hint in hints)
        {
            view.Paint(x, 0, " " + hint.Key, Theme.Palette.BarKey);
            x += 1 + TextFit.Width(hint.Key);
            view.Paint(x, 0, " " + hint.Does + " ", Theme.Palette.Bar);
            x += 2 + TextFit.Width(hint.Does);
        }

        return x;
    }

    // Those that have room, from the left: half a word would name no key.
    private IReadOnlyList<KeyHint> Fitting(int width)
    {
        var count = hints.Count;
        while (count > 0 && WidthOf(hints.Take(count)) > width + 1) count--;
        return [.. hints.Take(count)];
    }

    protected override bool OnClearingViewport() => true; // every cell is written below

    protected override bool OnDrawingContent(DrawContext? context)
    {
        if (meanwhile.Length > 0)
        {
            this.Paint(0, 0, Viewport.Width, TextLine.Of(" " + meanwhile, Tone.Strong));
            return true;
        }

        var x = Paint(this, 0, Fitting(Viewport.Width));
        if (x < Viewport.Width) this.Paint(x, 0, new string(' ', Viewport.Width - x), Theme.Palette.Bar);
        return true;
    }
}
