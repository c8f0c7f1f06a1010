using BuildLog.Tui.Shell;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>The first line: the program's name and, in a special shop, what is special about it.</summary>
internal sealed class TopLine : View
{
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
        const string name = " BuildLog  ";
        this.Paint(0, 0, name, Theme.Palette.BarKey);
        this.Paint(name.Length, 0, TextFit.Exactly(banner, Viewport.Width - name.Length), Theme.Palette.Bar);
        return true;
    }
}
