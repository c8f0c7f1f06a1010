using BuildLog.Sheet.Content;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>Engine speed over road speed in braille, one tooth for each gear, and the goal as a bracket at its speed.</summary>
internal static class SawtoothCells
{
    private const double RoomAbove = 1.02;
    private const double RoomBesideGoal = 1.05;

    /// <param name="chart">The numbers.</param>
    /// <param name="width">Cells across.</param>
    /// <param name="height">Cells down.</param>
    /// <param name="up">What stands over the axis of engine speed; empty where it is named elsewhere.</param>
    /// <param name="unit">What stands after the last number of road speed; empty where that axis is named elsewhere.</param>
    /// <returns>Null where there is nothing to draw or no room for it.</returns>
    public static ChartCells? Of(Sawtooth chart, int width, int height, string up, string unit)
    {
        if (chart.Gears.Count == 0 || ChartAxes.In(width, height) is not { } axes) return null;

        var topRpm = chart.EngineMax * RoomAbove;
        var topSpeed = Math.Max(chart.Gears.Max(gear => gear.ToSpeed), (chart.Goal?.Speed ?? 0) * RoomBesideGoal);
        var cells = new ChartCells(width, height);
        axes.PutUp(cells, 0, topRpm, up);
        axes.PutDots(cells, Teeth(chart, axes, topSpeed, topRpm));
        axes.PutAcross(cells, topSpeed, unit);
        PutGearNames(cells, chart, axes, topSpeed);
        if (chart.Goal is { } goal) PutGoal(cells, goal, axes, topSpeed, topRpm);
        return cells;
    }

    private static BrailleDots Teeth(Sawtooth chart, ChartAxes axes, double topSpeed, double topRpm)
    {
        var dots = new BrailleDots(axes.Columns, axes.Rows);
        var from = chart.Gears[0].FromSpeed;
        for (var i = 0; i < chart.Gears.Count; i++)
        {
            var gear = chart.Gears[i];
            var rpm = EngineAt(gear, from);
            dots.Line(from / topSpeed, rpm / topRpm, gear.ToSpeed / topSpeed, gear.ToEngine / topRpm);

            // A cruise lies below the speed at which its gear is taken when all of the engine is used.
            if (gear.Name == chart.Goal?.Gear) dots.Dotted([(gear.FromSpeed / topSpeed, gear.FromEngine / topRpm), (from / topSpeed, rpm / topRpm)]);
            if (i + 1 == chart.Gears.Count) break;

            from = gear.ToSpeed;
            dots.Line(from / topSpeed, gear.ToEngine / topRpm, from / topSpeed, EngineAt(chart.Gears[i + 1], from) / topRpm);
        }

        return dots;
    }

    private static double EngineAt(GearLine gear, double speed) => gear.ToEngine * speed / gear.ToSpeed;

    // Each gear's name stands where its tooth ends.
    private static void PutGearNames(ChartCells cells, Sawtooth chart, ChartAxes axes, double topSpeed)
    {
        var free = 0;
        foreach (var gear in chart.Gears)
        {
            var x = axes.X(gear.ToSpeed / topSpeed) - ChartAxes.Left - 1 - TextFit.Width(gear.Name) - 1;
            if (x < free) continue;
            cells.Put(ChartAxes.Left + 1 + x, 0, gear.Name, Tone.Heading);
            free = x + TextFit.Width(gear.Name) + 1;
        }
    }

    private static void PutGoal(ChartCells cells, GoalMark goal, ChartAxes axes, double topSpeed, double topRpm)
    {
        var x = axes.X(goal.Speed / topSpeed);
        var high = axes.Y(Math.Min(1, goal.EngineHigh / topRpm));
        var low = axes.Y(Math.Max(0, goal.EngineLow / topRpm));
        for (var y = high; y <= low; y++) cells.Put(x, y, high == low ? "╪" : y == high ? "┬" : y == low ? "┴" : "│", Tone.Heading);
        var word = Spoken("goal");
        var right = x + 1 + word.Length < cells.Width;
        cells.Put(right ? x + 1 : x - word.Length, (high + low) / 2, word, Tone.Heading);
    }
}
