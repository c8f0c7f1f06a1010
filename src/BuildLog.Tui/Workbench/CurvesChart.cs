using BuildLog.Sheet.Content;
using BuildLog.Tui.Shell;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>Curves over road speed on a page below their title; what is missing where there are none.</summary>
internal sealed class CurvesChart : View
{
    private const int TitleRows = 1;
    private CurveChart? chart;
    private string title = "";
    private string missing = "";

    /// <param name="newChart">Null where a number is missing.</param>
    /// <param name="usualTitle">What it is called where there is none.</param>
    /// <param name="newMissing">What is said then.</param>
    public void Show(CurveChart? newChart, string usualTitle, string newMissing)
    {
        var newTitle = newChart?.Title ?? usualTitle;
        if (chart == newChart && title == newTitle && missing == newMissing) return;
        (chart, title, missing) = (newChart, newTitle, newMissing);
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        this.Paint(1, 0, TextFit.Cut(title, Math.Max(0, Viewport.Width - 1)), Tone.Heading);
        if (chart?.Curves.Any(curve => curve.Points.Any(point => point.Y > 0)) != true) return Say(missing.Length > 0 ? missing : Spoken("There is nothing left to pull with in any gear."));
        if (CurvesCells.Of(chart, Viewport.Width, Viewport.Height - TitleRows, chart.Across[(chart.Across.LastIndexOf(' ') + 1)..]) is not { } cells) return Say(Spoken("There is no room for the chart here: c gives it the whole page."));
        cells.PaintOn(this, TitleRows);
        return true;
    }

    private bool Say(string sentence)
    {
        var y = TitleRows + 1;
        foreach (var line in TextFit.Wrap(sentence, Math.Max(10, Viewport.Width - 2))) this.Paint(1, y++, line, Tone.Quiet);
        return true;
    }
}
