using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Charts;

/// <summary>Where road speed and engine speed are on the page.</summary>
internal sealed record SawtoothPlot(Box Area, AxisScale Speeds, AxisScale Engines)
{
    private const int MostSpeedSteps = 12;
    private const int MostEngineSteps = 7;

    public static SawtoothPlot Of(Sawtooth chart, Box area)
    {
        var speed = Math.Max(chart.SpeedMax, chart.Gears.Max(gear => Math.Max(gear.FromSpeed, gear.ToSpeed)));
        var engine = Math.Max(chart.EngineMax, chart.Gears.Max(gear => Math.Max(gear.FromEngine, gear.ToEngine)));
        if (chart.Goal is { } goal) (speed, engine) = (Math.Max(speed, goal.Speed), Math.Max(engine, goal.EngineHigh));

        return new SawtoothPlot(area, AxisScale.Reaching(speed, MostSpeedSteps), AxisScale.Reaching(engine, MostEngineSteps));
    }

    public PagePoint At(ChartPoint point) => new(X(point.Speed), Y(point.Engine));

    public double X(double speed) => Area.X + speed / Speeds.Max * Area.Width;

    public double Y(double engine) => Area.Bottom - engine / Engines.Max * Area.Height;
}
