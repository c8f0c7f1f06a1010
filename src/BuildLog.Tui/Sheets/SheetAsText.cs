using BuildLog.Sheet.Content;
using BuildLog.Sheet.Preview;
using BuildLog.Tui.Options;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Sheets;

/// <summary>The sheet on a terminal: its pages as wide as there is room, its charts in characters, drawn from the numbers that paper draws.</summary>
internal static class SheetAsText
{
    private const int Gap = 4;
    private const int NarrowestBeside = 70;
    private const int WidestChart = 100;
    private const int ChartRows = 16;

    public static IReadOnlyList<TextLine> Of(SheetPreview preview, int width) => [.. preview.Lines(new(width) { Draw = Charts }).Select(line => TextLine.Of(line))];

    // As on paper two beside each other, where each has room.
    private static IReadOnlyList<string> Charts(IReadOnlyList<Chart> charts, int width)
    {
        var beside = charts.Count > 1 && width >= (2 * NarrowestBeside) + Gap;
        var each = beside ? (width - Gap) / 2 : Math.Min(width, WidestChart);
        return [.. charts.Select(chart => Drawn(chart, each)).Chunk(beside ? 2 : 1).SelectMany(row => (IEnumerable<string>)["", .. Joined(row, each)])];
    }

    private static IEnumerable<string> Joined(IReadOnlyList<IReadOnlyList<string>> row, int each) => Enumerable.Range(0, row.Max(chart => chart.Count))
        .Select(y => string.Join(new string(' ', Gap), row.Select(chart => TextFit.Exactly(y < chart.Count ? chart[y] : "", each))).TrimEnd());

    private static IReadOnlyList<string> Drawn(Chart chart, int width) => chart switch
    {
        Sawtooth sawtooth => [Spoken($"engine speed, {sawtooth.EngineUnit}"), .. Drawn(SawtoothCells.Of(sawtooth, width, ChartRows, up: "", unit: ""), Spoken($"road speed, {sawtooth.SpeedUnit}"))],
        CurveChart curves => [curves.Title, .. Drawn(CurvesCells.Of(curves, width, ChartRows, unit: ""), curves.Across)],
        RegionMap map => MapWords.Drawn(map),
        _ => throw new ArgumentException($"Nobody draws a {chart.GetType().Name} in characters.", nameof(chart)),
    };

    // The axis across is named below it, at its end.
    private static IReadOnlyList<string> Drawn(ChartCells? cells, string across) => cells is null ? [Spoken("There is no room for the chart here.")] : [.. cells.Lines.Select(line => line.Text.TrimEnd()), across.PadLeft(cells.Width)];
}
