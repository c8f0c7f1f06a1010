using BuildLog.Tui.Shell;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>The speeds: headline, table of gears, sawtooth below or beside it; c gives the whole page to the chart.</summary>
internal sealed class SpeedsPage : VehiclePage
{
    private const int SideBySideFrom = 110;
    private const int LowestChart = 7;

    private readonly TextPage table = new();
    private readonly SawtoothChart chart = new();
    private SpeedsModel model = SpeedsModel.Without("");
    private bool chartAlone;

    public SpeedsPage()
        : base("Speeds")
    {
        Add(table, chart);
        SubViewLayout += (_, _) => Arrange();
    }

    public override IReadOnlyList<PageAct> Acts => [new(Key.C, "Give the whole page to the chart, or to the table again", new("c", "chart"), (_, _) => ToggleChart())];

    public override TableText? Table => model.Rows.Count == 0 ? null : new(["gear", .. model.Columns], [.. model.Rows.Select(row => (string[])[row.Gear, .. row.Cells])]);

    public override void Show(VehicleModel vehicle, bool fromTop)
    {
        model = vehicle.Speeds;
        table.Show(Lines());
        chart.Show(model.Chart);
        SetNeedsLayout();
    }

    private int TableHeight => TextPage.HeightOf(Lines(), Math.Max(20, Viewport.Width - 1));

    private void Arrange()
    {
        var hasChart = model.Chart is not null;
        var sideBySide = Viewport.Width >= SideBySideFrom;
        var room = Viewport.Height - TableHeight;
        table.Visible = !(chartAlone && hasChart);
        chart.Visible = hasChart && (chartAlone || sideBySide || room >= LowestChart);
        table.X = 1;
        table.Width = sideBySide ? Dim.Percent(45) : Dim.Fill();
        table.Height = chart.Visible && !sideBySide ? Dim.Absolute(TableHeight) : Dim.Fill();
        chart.X = sideBySide && !chartAlone ? Pos.Right(table) + 2 : Pos.Absolute(0);
        chart.Y = sideBySide || chartAlone ? 0 : TableHeight;
        chart.Width = Dim.Fill();
        chart.Height = Dim.Fill();
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

        var gear = model.Rows.Select(row => TextFit.Width(row.Gear)).Append(4).Max();
        var widths = model.Columns.Select((column, i) => model.Rows.Select(row => TextFit.Width(row.Cells[i])).Append(TextFit.Width(column)).Max()).ToList();
        string Line(string first, IReadOnlyList<string> cells) =>
            TextFit.Exactly(first, gear) + string.Concat(cells.Select((cell, i) => "  " + TextFit.Exactly(cell, widths[i], right: true)));

        return
        [
            TextLine.Of(model.Headline, Tone.Strong),
            TextLine.Of(Line("gear", model.Columns), Tone.Quiet),
            .. model.Rows.Select(row => TextLine.Of(Line(row.Gear, row.Cells))),
        ];
    }
}
