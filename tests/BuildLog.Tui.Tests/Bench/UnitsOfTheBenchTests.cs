using BuildLog.Data.Goals;
using BuildLog.Data.Hunting;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;
using static BuildLog.Tui.Tests.Headless.Steps;

namespace BuildLog.Tui.Tests.Bench;

/// <summary>One choice of units is every page's, also for what was typed in the other ones.</summary>
public sealed class UnitsOfTheBenchTests : IDisposable
{
    private readonly SmallShop small = new();

    public void Dispose() => small.Dispose();

    // By definition: 1 in = 25.4 mm, 1 mi = 1.609344 km, 1 lb = 0.45359237 kg; 1 bar = 14.504 psi.
    [Theory]
    [InlineData("70 mph", Kind.Speed, "112.7 km/h", "70 mph")]
    [InlineData("57 in", Kind.Length, "1448 mm", "57 in")]
    [InlineData("790 mm", Kind.Length, "790 mm", "31.1 in")]
    [InlineData("1.95 m", Kind.Length, "1.95 m", "76.77 in")]
    [InlineData("10 km", Kind.Length, "10 km", "6.214 mi")]
    [InlineData("1450", Kind.Mass, "1450 kg", "3197 lb")]
    [InlineData("2.2 bar", Kind.Pressure, "2.2 bar", "31.91 psi")]
    [InlineData("3 deg", Kind.Angle, "3 deg", "3 deg")]
    public void What_was_typed_is_told_in_the_units_shown(string typed, Kind kind, string metric, string imperial)
    {
        Assert.Equal(metric, UnitSystem.Metric.InWords(typed, kind));
        Assert.Equal(imperial, UnitSystem.Imperial.InWords(typed, kind));
    }

    // 1 lb-ft is 1.355818 N·m: 230 of them are 311.838, of which nobody typed the last figures.
    [Theory]
    [InlineData("230 lb-ft", "311.8 N·m", "230 lb·ft")]
    [InlineData("311.75 N·m", "311.75 N·m", "229.9 lb·ft")]
    public void What_is_meant_as_it_stands_has_four_figures_in_units_nobody_typed(string text, string metric, string imperial)
    {
        var typed = QuantityText.Read(text, Kind.Torque).OrRefuse();
        var known = new Known(typed.ToMeasured("peak torque"), Source.OwnersWord, typed.InWords);

        Assert.Equal(metric, UnitSystem.Metric.InWords(known, Units.NewtonMetre));
        Assert.Equal(imperial, UnitSystem.Imperial.InWords(known, Units.NewtonMetre));
    }

    [Fact]
    public void Goals_and_sessions_are_told_in_them_and_readings_stay_as_typed()
    {
        small.Shop.Add(new CruiseGoalEntry(small.Bittern) { Speed = "70 mph", EngineSpeed = "2600 rpm" });
        small.Shop.Add(new LimitGoalEntry(small.Bittern, Limited.Track) { Limit = "57 in" });
        small.Shop.Add(new WeighbridgeSession(small.Bittern) { Date = new(2026, 5, 3), Step = "20 kg", Readings = ["front 700 kg", "rear 750 kg"] });

        var (metric, imperial) = (Model(UnitSystem.Metric), Model(UnitSystem.Imperial));
        Assert.Contains("Cruise at 112.7 km/h in top gear", metric.Goal.Wants[0], StringComparison.Ordinal);
        Assert.Contains("Cruise at 70 mph in top gear", imperial.Goal.Wants[0], StringComparison.Ordinal);
        Assert.Contains("Track of 1448 mm or less.", metric.Goal.Wants);

        // 1450 kg are 3196.7 lb; two steps of 20 kg read to their halves are 1.96 · √2 · 10/√3 = 16 kg or 35.3 lb at 95 %, shown in one figure.
        var weighed = imperial.Measurements.Rows.Single();
        Assert.Equal("3200 ± 40 lb", weighed.Result);
        Assert.Contains("plate reads to 44.09 lb", weighed.Conditions!);
        Assert.DoesNotContain(weighed.Interpretation!, line => line.Contains(" kg", StringComparison.Ordinal));
        Assert.Equal(["front 700 kg", "rear 750 kg"], weighed.Readings);
    }

    [Fact]
    public void Switching_them_reaches_the_pages_of_the_record_too()
    {
        small.Shop.Add(new WantedPart(small.Bittern, WantedKind.Tyres) { Title = "tyres for Bittern", Windows = [new(WindowOf.Circumference, "1.95 m", "2.05 m")] });
        var forNow = new ForNow();
        using var screen = new HeadlessScreen(120, 36);
        using var workbench = new WorkbenchScreen(new WorkbenchActs(small.Shop, small.Clock, UnitSystem.Metric, forNow: forNow), BenchPages.All(small.Shop, small.Clock, forNow));
        screen.Run(
            workbench, Press((Key)'0'), Press(Key.CursorRight), See("[Wanted]"), See("1.95 to 2.05 m"), Press((Key)'u'), See("Lengths in inches"), See("76.77 to 80.71 in"),
            NoLongerSee("2.05 m"), Press((Key)'u'), See("1.95 to 2.05 m"), Press((Key)'q'));
    }

    private VehicleModel Model(UnitSystem units) => VehicleOnBench.Read(small.Shop, small.Bittern, new(2026, 5, 20)).ToModel(units);
}
