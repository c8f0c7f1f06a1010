using System.Globalization;
using BuildLog.Tui.Shell;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>Engine speed over road speed, one tooth for each gear, and the goal as a bracket at its speed.</summary>
internal sealed class SawtoothChart : View
{
    private const int Axis = 6;  // "4000 ┤"
    private const int Names = 1; // the gears' names, above the teeth
    private const int Under = 2; // the axis and its numbers
    private SawtoothModel? model;

    public void Show(SawtoothModel? newModel)
    {
        model = newModel;
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var columns = Viewport.Width - Axis - 1;
        var rows = Viewport.Height - Names - Under;
        if (model is not { Gears.Count: > 0 } chart || columns < 20 || rows < 3) return true;

        var topRpm = chart.ShiftRpm * 1.02;
        var topSpeed = chart.Gears.Max(gear => gear.SpeedPer1000) * chart.ShiftRpm / 1000;
        topSpeed = Math.Max(topSpeed, (chart.Goal?.Speed ?? 0) * 1.05);

        DrawTeeth(chart, columns, rows, topSpeed, topRpm);
        DrawRpmAxis(rows, topRpm);
        DrawSpeedAxis(chart, columns, rows, topSpeed);
        DrawGearNames(chart, columns, topSpeed);
        DrawGoal(chart, columns, rows, topSpeed, topRpm);
        return true;
    }

    private void DrawTeeth(SawtoothModel chart, int columns, int rows, double topSpeed, double topRpm)
    {
        var dots = new SawtoothDots(columns, rows);
        var rpm = chart.FromRpm;
        for (var i = 0; i < chart.Gears.Count; i++)
        {
            var perRpm = chart.Gears[i].SpeedPer1000 / 1000;
            var shiftAt = chart.ShiftRpm * perRpm;
            dots.Line(rpm * perRpm / topSpeed, rpm / topRpm, shiftAt / topSpeed, chart.ShiftRpm / topRpm);
            if (i + 1 == chart.Gears.Count) break;

            rpm = shiftAt / (chart.Gears[i + 1].SpeedPer1000 / 1000);
            dots.Line(shiftAt / topSpeed, chart.ShiftRpm / topRpm, shiftAt / topSpeed, rpm / topRpm);
        }

        for (var y = 0; y < rows; y++) this.Paint(Axis + 1, Names + y, dots.Row(y), Tone.Plain);
    }

    private void DrawRpmAxis(int rows, double topRpm)
    {
        var step = NiceStep(topRpm, Math.Max(3, rows / 2.0));
        for (var y = 0; y < rows; y++) this.Paint(Axis, Names + y, "│", Tone.Quiet);
        this.Paint(0, 0, "rev/min", Tone.Quiet);
        for (var rpm = step; rpm <= topRpm; rpm += step)
        {
            this.Paint(0, Names + RowOf(rpm / topRpm, rows), Number(rpm).PadLeft(Axis - 1) + " ┤", Tone.Quiet);
        }
    }

    private void DrawSpeedAxis(SawtoothModel chart, int columns, int rows, double topSpeed)
    {
        this.Paint(Axis, Names + rows, "└" + new string('─', columns), Tone.Quiet);
        var numbers = new string(' ', columns).ToCharArray();
        var step = NiceStep(topSpeed, columns / 7.0);
        for (var speed = step; speed <= topSpeed; speed += step)
        {
            var isLast = speed + step > topSpeed;
            var text = isLast ? $"{Number(speed)} {chart.SpeedUnit}" : Number(speed);
            var x = ColumnOf(speed / topSpeed, columns) - (Number(speed).Length / 2);
            x = Math.Min(x, columns - text.Length);
            text.CopyTo(0, numbers, x, text.Length);
        }

        this.Paint(Axis + 1, Names + rows + 1, new string(numbers), Tone.Quiet);
    }

    // Each gear's name stands where its tooth ends.
    private void DrawGearNames(SawtoothModel chart, int columns, double topSpeed)
    {
        var free = 0;
        foreach (var gear in chart.Gears)
        {
            var x = ColumnOf(gear.SpeedPer1000 * chart.ShiftRpm / 1000 / topSpeed, columns) - TextFit.Width(gear.Name) - 1;
            if (x < free) continue;
            this.Paint(Axis + 1 + x, 0, gear.Name, Tone.Heading);
            free = x + TextFit.Width(gear.Name) + 1;
        }
    }

    private void DrawGoal(SawtoothModel chart, int columns, int rows, double topSpeed, double topRpm)
    {
        if (chart.Goal is not { } goal) return;
        var x = Axis + 1 + ColumnOf(goal.Speed / topSpeed, columns);
        var high = Names + RowOf(Math.Min(1, goal.HighRpm / topRpm), rows);
        var low = Names + RowOf(Math.Max(0, goal.LowRpm / topRpm), rows);
        for (var y = high; y <= low; y++) this.Paint(x, y, high == low ? "╪" : y == high ? "┬" : y == low ? "┴" : "│", Tone.Heading);
        const string word = "goal";
        var right = x + 1 + word.Length < Viewport.Width;
        this.Paint(right ? x + 1 : x - word.Length, (high + low) / 2, word, Tone.Heading);
    }

    private static int ColumnOf(double part, int columns) => (int)Math.Round(part * (columns - 1));

    private static int RowOf(double part, int rows) => (int)Math.Round((1 - part) * (rows - 1));

    private static string Number(double value) => value.ToString("0", CultureInfo.InvariantCulture);

    /// <summary>The smallest of 1, 2, 5 times a power of ten that gives at most so many marks.</summary>
    private static double NiceStep(double top, double marks)
    {
        var rough = top / Math.Max(1, marks);
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        return (rough / power) switch
        {
            <= 1 => power,
            <= 2 => 2 * power,
            <= 5 => 5 * power,
            _ => 10 * power,
        };
    }
}
