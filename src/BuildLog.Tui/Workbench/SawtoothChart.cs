using BuildLog.Sheet.Content;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>The sawtooth on a page; nothing where there is no room for it.</summary>
internal sealed class SawtoothChart : View
{
    private Sawtooth? chart;

    public void Show(Sawtooth? newChart)
    {
        chart = newChart;
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        if (chart is not null) SawtoothCells.Of(chart, Viewport.Width, Viewport.Height, chart.EngineUnit, chart.SpeedUnit)?.PaintOn(this);
        return true;
    }
}
