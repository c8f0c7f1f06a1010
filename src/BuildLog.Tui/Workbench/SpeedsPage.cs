using System.Drawing;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Shell;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>The speeds: headline, table of gears, a chart below or beside it, or on a large screen all three; v shows the next chart, c gives it the whole page.</summary>
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
    private const int AllChartsFrom = 30; // rows
    private const int HighestAlone = 28; // of the sawtooth beside a table: steeper it says no more

    private readonly TextPage table = new();
    private readonly SawtoothChart sawtooth = new();
    private readonly CurvesChart reserve = new() { Visible = false };
    private readonly CurvesChart hills = new() { Visible = false };
    private readonly SpeedsActs? acts;
    private Lazy<PullCharts?> pull = new(() => null); // computed when it is first looked at
    private Charts shown;
    private SpeedsModel model = SpeedsModel.Without("");
    private bool chartAlone;

    /// <param name="acts">Chooses gears, speeds and unit; null where the table is as it is.</param>
    public SpeedsPage(SpeedsActs? acts = null)
        : base("Speeds", Spoken("Speeds"))
    {
        this.acts = acts;
        Add(table, sawtooth, reserve, hills);
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
        pull = new(() => model.Pull());
        SetNeedsLayout();
    }

    private bool SideBySide => Viewport.Width >= SideBySideFrom;

    private bool AllInView => !chartAlone && SideBySide && Viewport.Height >= AllChartsFrom;

    private int TableWidth => SideBySide ? Viewport.Width * 45 / 100 : Viewport.Width - 1;

    private int TableHeight => TextPage.HeightOf(Lines(), Math.Max(20, TableWidth - 1));

    private void Arrange()
    {
        var hasChart = model.Chart is not null;
        var inView = hasChart && (chartAlone || SideBySide || Viewport.Height - TableHeight >= LowestChart);
        sawtooth.Visible = inView && (AllInView || shown == Charts.Sawtooth);
        reserve.Visible = inView && (AllInView || shown == Charts.Reserve);
        hills.Visible = inView && (AllInView ? pull.Value is not null : shown == Charts.Hill);
        table.Visible = !(chartAlone && hasChart);
        Put(table, new(1, 0, TableWidth, inView && (AllInView || !SideBySide) ? TableHeight : Viewport.Height));
        if (AllInView) PutAll();
        else foreach (var chart in new View[] { sawtooth, reserve, hills }) Put(chart, PlaceOfOne);
        if (reserve.Visible || hills.Visible) ShowPull();
    }

    private Rectangle PlaceOfOne => chartAlone ? new(0, 0, Viewport.Width, Viewport.Height)
        : SideBySide ? RightOf(0, Viewport.Height)
        : new(0, TableHeight, Viewport.Width, Viewport.Height - TableHeight);

    // The hills below the sawtooth, and beside them the force, below the table; where both cannot be said, what they need.
    private void PutAll()
    {
        var half = pull.Value is null ? Math.Min(HighestAlone, Viewport.Height) : Viewport.Height / 2;
        Put(sawtooth, RightOf(0, half));
        Put(hills, RightOf(half, Viewport.Height - half));
        var top = pull.Value is null ? TableHeight + 1 : Math.Max(TableHeight + 1, half);
        Put(reserve, new(0, top, TableWidth + 1, Viewport.Height - top));
    }

    private Rectangle RightOf(int top, int height) => new(TableWidth + 3, top, Viewport.Width - TableWidth - 3, height);

    private static void Put(View view, Rectangle place)
    {
        view.X = place.X;
        view.Y = place.Y;
        view.Width = Math.Max(0, place.Width);
        view.Height = Math.Max(0, place.Height);
    }

    // Where all three stand there already, the next one is the first as large as the page.
    private string? NextChart()
    {
        if (AllInView) return ToggleChart();
        shown = shown == Charts.Hill ? Charts.Sawtooth : shown + 1;
        SetNeedsLayout();
        SetNeedsDraw();
        return null;
    }

    private void ShowPull()
    {
        reserve.Show(pull.Value?.Reserve, Spoken("Force left in each gear"), model.PullMissing);
        hills.Show(pull.Value?.Hill, Spoken("Steepest hill held in each gear"), model.PullMissing);
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
