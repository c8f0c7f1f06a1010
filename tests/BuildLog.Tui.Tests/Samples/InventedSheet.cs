using BuildLog.Sheet.Content;

namespace BuildLog.Tui.Tests.Samples;

/// <summary>A sheet with each kind of chart, written out by hand. Every name and number in it is invented.</summary>
internal static class InventedSheet
{
    private const string Across = "road speed, km/h";

    public static Sawtooth Sawtooth { get; } = InventedShop.Heron.Speeds.Chart!;

    /// <summary>A straight line from nothing to 100 kW at 200 km/h, and what the road asks.</summary>
    public static CurveChart Power { get; } = new()
    {
        Title = "Power at the wheels and road load",
        Across = Across,
        Up = "power, kW",
        Curves = [new("4th", CurveKind.Does, [new(0, 0), new(200, 100)]), new("road load", CurveKind.Needs, [new(0, 0), new(100, 15), new(160, 60)])],
    };

    public static CurveChart Hill { get; } = new()
    {
        Title = "Steepest hill held in each gear",
        Across = Across,
        Up = "gradient, %",
        Curves = [new("2nd", CurveKind.Does, [new(20, 24), new(60, 12)]), new("wheels spin", CurveKind.Limit, [new(0, 30), new(60, 30)])],
    };

    public static RegionMap Map { get; } = new(["3.55", "3.31", "3.08"], "1.95 m", "2.15 m", ["xxxxwFFF", "xxwFFF+w", "wFFFFwxx"]);

    public static SheetContent Content { get; } = new()
    {
        Id = new("6f4a8a35-2c1a-4e2e-9d3b-0d4f3f5a2b61"),
        Created = new(2026, 5, 20, 10, 0, 0, TimeSpan.Zero),
        PrintedOn = "20 May 2026",
        Vehicle = new() { Name = "Heron estate", ShopName = "Thorley's shed" },
        Driveline =
        [
            new("Axle", "Hedge 8 beam axle, no. H8-2218, with the long studs and the drums of the estate", "ratio 4.08 ± 0.02", "counted: one wheel held, three counts of ten wheel turns on 3 May 2026"),
            new("Tyres", "205/65R15 on Pond rims", "rolling circumference 2.04 ± 0.03 m", "rolled out on 4 May 2026, loaded, over four turns"),
        ],
        Speeds = new(["Gear", "ratio", "2000", "4000"], [["3rd", "1.41", "43", "85"], ["4th", "1.00", "60", "120"]], "Road speed in km/h at the engine speed in rev/min; the circumference is that of the loaded tyre, rolled out over four turns of the wheel."),
        Sawtooth = Sawtooth,
        Pull = new(Power, Hill),
        AxleAndTyre = Map,
    };
}
