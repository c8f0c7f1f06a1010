using BuildLog.Tui.Bench;
using BuildLog.Tui.Shell;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>The speeds: headline, table of gears, a chart below or beside it; v shows the next chart, c gives it the whole page.</summary>
internal sealed class SpeedsPage : VehiclePage
{
    private enum Charts
    {
        Sawtooth,
        Reserve,
        Hill,
    }

    private const int SideBySideFrom = 110;
    private const int LowestChart = 7;

    private readonly TextPage table = new();
    private readonly SawtoothChart sawtooth = new();
    private readonly CurvesChart curves = new() { Visible = false };
    private readonly TextPage title = new() { Height = 1, CanFocus = false };
    private readonly SpeedsActs? acts;
    private PullCharts? pull;
    private Charts shown;
    private SpeedsModel model = SpeedsModel.Without("");
    private bool chartAlone;

    /// <param name="acts">Chooses gears, speeds and unit; null where the table is as it is.</param>
    public SpeedsPage(SpeedsActs? acts = null)
        : base("Speeds", Spoken("Speeds"))
    {
        this.acts = acts;
        Add(table, title, sawtooth, curves);
        SubViewLayout += (_, _) => Arrange();
    }

    public override IReadOnlyList<PageAct> Acts =>
    [
        .. acts is null ? Enumerable.Empty<PageAct>() : [new(Key.Enter, Spoken("Choose gears, speeds and unit of the table"), new("Enter", Spoken("choose")), (view, vehicle) => acts.Choose(view, vehicle.Id)) { AtOnce = true }],
        new(Key.V, Spoken("Show the next chart: sawtooth, force left, hills"), new("v", Spoken("next")), (_, _) => NextChart()) { AtOnce = true },
        new(Key.C, Spoken("Give the whole page to the chart, or to the table again"), new("c", Spoken("big")), (_, _) => ToggleChart()) { AtOnce = true },
    ];

    public override TableText? Table => model.Rows.Count == 0 ? null : new([Spoken("gear"), .. model.Columns], [.. model.Rows.Select(row => (string[])[row.Gear, .. row.Cells])]);

    public override void Show(VehicleModel vehicle, bool fromTop)
    {
        model = vehicle.Speeds;
        table.Show(Lines());
        sawtooth.Show(model.Chart);
        pull = null;
        ShowCurves();
        SetNeedsLayout();
    }

    private int TableHeight => TextPage.HeightOf(Lines(), Math.Max(20, Viewport.Width - 1));

    private void Arrange()
    {
        var hasChart = model.Chart is not null;
        var sideBySide = Viewport.Width >= SideBySideFrom;
        var room = Viewport.Height - TableHeight;
        var inView = hasChart && (chartAlone || sideBySide || room >= LowestChart);
        table.Visible = !(chartAlone && hasChart);
        table.X = 1;
        table.Width = sideBySide ? Dim.Percent(45) : Dim.Fill();
        table.Height = inView && !sideBySide ? Dim.Absolute(TableHeight) : Dim.Fill();
        var top = sideBySide || chartAlone ? 0 : TableHeight;
        title.Visible = inView && shown != Charts.Sawtooth;
        sawtooth.Visible = inView && shown == Charts.Sawtooth;
        curves.Visible = inView && shown != Charts.Sawtooth;
        foreach (var view in new View[] { title, sawtooth, curves })
        {
            view.X = sideBySide && !chartAlone ? Pos.Right(table) + 2 : Pos.Absolute(0);
            view.Y = view == curves ? top + 1 : top;
            view.Width = Dim.Fill();
            if (view != title) view.Height = Dim.Fill();
        }
    }

    private string? NextChart()
    {
        shown = shown == Charts.Hill ? Charts.Sawtooth : shown + 1;
        ShowCurves();
        SetNeedsLayout();
        SetNeedsDraw();
        return null;
    }

    // Computed when they are first looked at.
    private void ShowCurves()
    {
        if (shown == Charts.Sawtooth) return;
        pull ??= model.Pull();
        var chart = shown == Charts.Reserve ? pull?.Reserve : pull?.Hill;
        title.Show([TextLine.Of(" " + (chart?.Title ?? (shown == Charts.Reserve ? Spoken("Force left in each gear") : Spoken("Steepest hill held in each gear"))), Tone.Heading)]);
        curves.Show(chart, model.PullMissing);
    }

    private string? ToggleChart()
    {
        chartAlone = !chartAlone;
        if (!chartAlone) table.SetFocus();
        else SetFocus();
        SetNeedsLayout();
        SetNeedsDraw();
        return null;
    }

    private List<TextLine> Lines()
    {
        if (model.Missing is { } missing) return [TextLine.Of(missing)];

        var gear = model.Rows.Select(row => TextFit.Width(row.Gear)).Append(TextFit.Width(Spoken("gear"))).Max();
        var widths = model.Columns.Select((column, i) => model.Rows.Select(row => TextFit.Width(row.Cells[i])).Append(TextFit.Width(column)).Max()).ToList();
        string Line(string first, IReadOnlyList<string> cells) =>
            TextFit.Exactly(first, gear) + string.Concat(cells.Select((cell, i) => "  " + TextFit.Exactly(cell, widths[i], right: true)));

        return
        [
            TextLine.Of(model.Headline, Tone.Strong),
            TextLine.Of(Line(Spoken("gear"), model.Columns), Tone.Quiet),
            .. model.Rows.Select(row => TextLine.Of(Line(row.Gear, row.Cells))),
            .. model.Footnote is { } footnote ? (TextLine[])[TextLine.Of(footnote, Tone.Quiet)] : [],
        ];
    }
}
