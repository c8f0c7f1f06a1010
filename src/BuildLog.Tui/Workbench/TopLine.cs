using BuildLog.Tui.Shell;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>The first line: the program's name, what is special about a special shop, and the two keys that work everywhere.</summary>
internal sealed class TopLine : View
{
    private static KeyHint[] AlwaysThere => [new("w", Spoken("what now")), new("a", Spoken("all keys")), new("F1", Spoken("help")), new("q", Spoken("quit"))];
    private string banner = "";

    public TopLine()
    {
        Height = 1;
        Width = Dim.Fill();
    }

    public void Show(string? newBanner)
    {
        banner = newBanner ?? "";
        SetNeedsDraw();
    }

    protected override bool OnClearingViewport() => true; // every cell is written below

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var name = Spoken(" BuildLog  ");
        var width = Viewport.Width - name.Length - KeyLine.WidthOf(AlwaysThere) - 1;
        this.Paint(0, 0, name, Theme.Palette.BarKey);
        this.Paint(name.Length, 0, TextFit.Exactly(banner, width + 1), Theme.Palette.Bar);
        KeyLine.Paint(this, name.Length + width + 1, AlwaysThere);
        return true;
    }
}
