using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Shell;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>Engine speed over road speed, one tooth for each gear, and the goal as a bracket at its speed.</summary>
internal sealed class SawtoothChart : View
{
    private SawtoothModel? model;

    public void Show(SawtoothModel? newModel)
    {
        model = newModel;
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        if (model is not { Gears.Count: > 0 } chart || ChartAxes.In(this) is not { } axes) return true;

        var topRpm = chart.ShiftRpm * 1.02;
        var topSpeed = chart.Gears.Max(gear => gear.SpeedPer1000) * chart.ShiftRpm / 1000;
        topSpeed = Math.Max(topSpeed, (chart.Goal?.Speed ?? 0) * 1.05);

        axes.PaintDots(this, Teeth(chart, axes, topSpeed, topRpm));
        axes.PaintUp(this, topRpm, Units.RevolutionPerMinute.InWords);
        axes.PaintAcross(this, topSpeed, chart.SpeedUnit);
        DrawGearNames(chart, axes, topSpeed);
        DrawGoal(chart, axes, topSpeed, topRpm);
        return true;
    }

    private static BrailleDots Teeth(SawtoothModel chart, ChartAxes axes, double topSpeed, double topRpm)
    {
        var dots = new BrailleDots(axes.Columns, axes.Rows);
        var rpm = chart.FromRpm;
        for (var i = 0; i < chart.Gears.Count; i++)
        {
            var perRpm = chart.Gears[i].SpeedPer1000 / 1000;
            var shiftAt = chart.ShiftRpm * perRpm;
            dots.Line(rpm * perRpm / topSpeed, rpm / topRpm, shiftAt / topSpeed, chart.ShiftRpm / topRpm);

            // A cruise lies below the speed at which its gear is taken when all of the engine is used.
            if (chart.Gears[i].Name == chart.Goal?.Gear) dots.Dotted(chart.FromRpm * perRpm / topSpeed, chart.FromRpm / topRpm, rpm * perRpm / topSpeed, rpm / topRpm);
            if (i + 1 == chart.Gears.Count) break;

            rpm = shiftAt / (chart.Gears[i + 1].SpeedPer1000 / 1000);
            dots.Line(shiftAt / topSpeed, chart.ShiftRpm / topRpm, shiftAt / topSpeed, rpm / topRpm);
        }

        return dots;
    }

    // Each gear's name stands where its tooth ends.
    private void DrawGearNames(SawtoothModel chart, ChartAxes axes, double topSpeed)
    {
        var free = 0;
        foreach (var gear in chart.Gears)
        {
            var x = axes.X(gear.SpeedPer1000 * chart.ShiftRpm / 1000 / topSpeed) - ChartAxes.Left - 1 - TextFit.Width(gear.Name) - 1;
            if (x < free) continue;
            this.Paint(ChartAxes.Left + 1 + x, 0, gear.Name, Tone.Heading);
            free = x + TextFit.Width(gear.Name) + 1;
        }
    }

    private void DrawGoal(SawtoothModel chart, ChartAxes axes, double topSpeed, double topRpm)
    {
        if (chart.Goal is not { } goal) return;
        var x = axes.X(goal.Speed / topSpeed);
        var high = axes.Y(Math.Min(1, goal.HighRpm / topRpm));
        var low = axes.Y(Math.Max(0, goal.LowRpm / topRpm));
        for (var y = high; y <= low; y++) this.Paint(x, y, high == low ? "╪" : y == high ? "┬" : y == low ? "┴" : "│", Tone.Heading);
        var word = Spoken("goal");
        var right = x + 1 + word.Length < Viewport.Width;
        this.Paint(right ? x + 1 : x - word.Length, (high + low) / 2, word, Tone.Heading);
    }
}
