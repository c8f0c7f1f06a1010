using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>The bottom line: the keys that work now, always on screen.</summary>
internal sealed class KeyLine : View
{
    private IReadOnlyList<KeyHint> hints = [];

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

    protected override bool OnClearingViewport() => true; // every cell is written below

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var x = 0;
        foreach (var hint in hints)
        {
            this.Paint(x, 0, " " + hint.Key, Theme.Palette.BarKey);
            x += 1 + TextFit.Width(hint.Key);
            this.Paint(x, 0, " " + hint.Does + " ", Theme.Palette.Bar);
            x += 2 + TextFit.Width(hint.Does);
        }

        if (x < Viewport.Width) this.Paint(x, 0, new string(' ', Viewport.Width - x), Theme.Palette.Bar);
        return true;
    }
}
