using BuildLog.Sheet.Content;
using BuildLog.Sheet.Tests.Samples;

namespace BuildLog.Sheet.Tests.Golden;

public sealed class SmallSheetTests
{
    private static readonly SheetContent Small = Sheets.Empty with
    {
        PrintedOn = "2 January 2026",
        Vehicle = new VehicleTitle { ShopName = "Harrow Lane Restomods", Name = "Kestrel", Owner = "A. Osei", State = "running" },
        Driveline = [new("Rear axle", "Fell 9-bolt", "3.545 ± 0.004 : 1", "measured")],
        KeyFigures = [new("Engine speed at 110 km/h", "2486 ± 11 rev/min")],
        CruiseGoal = "110 km/h at 2300 to 2600 rev/min.",
        Speeds = new SpeedsTable(["Gear", "Ratio"], [["1", "3.680"], ["2", "2.140"]]),
        Sawtooth = new Sawtooth
        {
            SpeedUnit = "km/h",
            EngineUnit = "rev/min",
            SpeedMax = 80,
            EngineMax = 5000,
            Gears = [new("1", 10, 1000, 40, 4000), new("2", 20, 1000, 80, 4000)],
            Goal = new GoalMark(60, 2500, 3500, "goal: 60 km/h"),
        },
        Findings = [new("watch", "Cruise goal", "It may be met.", "a taller axle", "ten more turns")],
    };

    [Fact]
    public void Is_drawn_as_written_in_small_sheet_txt()
    {
        var drawn = OperationsAsText.Of(BuildSheet.Draw(Small));

        var expected = Expected("small-sheet.txt");
        if (drawn != expected) File.WriteAllText(Path.Combine(AppContext.BaseDirectory, "small-sheet.drawn.txt"), drawn);
        Assert.True(drawn == expected, $"The page changed. Compare Golden/small-sheet.txt with {AppContext.BaseDirectory}small-sheet.drawn.txt, and take it over if the change is meant.");
    }

    private static string Expected(string name)
    {
        using var resource = typeof(SmallSheetTests).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(resource);
        return reader.ReadToEnd();
    }
}
