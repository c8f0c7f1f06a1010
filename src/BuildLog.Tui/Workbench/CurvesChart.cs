using BuildLog.Sheet.Content;
using BuildLog.Tui.Shell;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>Curves over road speed on a page; what is missing where there are none.</summary>
internal sealed class CurvesChart : View
{
    private CurveChart? chart;
    private string missing = "";

    public void Show(CurveChart? newChart, string newMissing)
    {
        (chart, missing) = (newChart, newMissing);
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        if (chart?.Curves.Any(curve => curve.Points.Any(point => point.Y > 0)) != true) return Say(missing.Length > 0 ? missing : Spoken("There is nothing left to pull with in any gear."));
        if (CurvesCells.Of(chart, Viewport.Width, Viewport.Height, chart.Across[(chart.Across.LastIndexOf(' ') + 1)..]) is not { } cells) return Say(Spoken("There is no room for the chart here: c gives it the whole page."));
        cells.PaintOn(this);
        return true;
    }

    private bool Say(string sentence)
    {
        var y = 1;
        foreach (var line in TextFit.Wrap(sentence, Math.Max(10, Viewport.Width - 2))) this.Paint(1, y++, line, Tone.Quiet);
        return true;
    }
}
