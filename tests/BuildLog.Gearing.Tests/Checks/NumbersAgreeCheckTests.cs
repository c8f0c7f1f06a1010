using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class NumbersAgreeCheckTests
{
    [Fact]
    public void What_agrees_is_not_spoken_of()
        => Assert.Empty(Look(InventedCar.Plain with { Engine = Turning(4500, pull: 1200, InventedLoad.Flat(200, 1000, 4500)), Load = Told(0.52), AxleMasses = Weighed(700, 800) }, "2400"));

    [Theory]
    [InlineData(4500, "The lowest clean pull, 4500 rev/min, is not below the redline, 4500 rev/min.")]
    [InlineData(5400, "The lowest clean pull, 5400 rev/min, is not below the redline, 4500 rev/min.")]
    [InlineData(4200, "The lowest clean pull, 4200 rev/min, is above the last point of the torque curve, 4000 rev/min.")]
    public void A_pull_that_begins_where_the_engine_ends_is_asked_about(double pull, string says)
    {
        var finding = Assert.Single(Look(InventedCar.Plain with { Engine = Turning(4500, pull, InventedLoad.Flat(200, 1000, 4000)) }));

        Assert.Equal((Verdict.Watch, says), (finding.Verdict, finding.Says));
        Assert.NotEmpty(finding.Cures);
        Assert.Equal([Position.Engine], finding.Between);
    }

    [Fact]
    public void Torque_beyond_the_redline_is_asked_about()
        => Assert.Equal("The torque is given at 5000 rev/min, beyond the redline of 4500 rev/min.", Assert.Single(Look(InventedCar.Plain with { Engine = Turning(4500, null, InventedLoad.Flat(200)) })).Says);

    // Peaks at 2500 and 4400: the curve goes on to 5280 by itself, which nobody typed.
    [Theory]
    [InlineData(4500, 0)]
    [InlineData(4300, 1)]
    public void Of_a_drawn_curve_the_peaks_are_what_was_typed(double redline, int findings)
        => Assert.Equal(findings, Look(InventedCar.Plain with { Engine = Turning(redline, null, PlausibleCurve.From(200, 2500 / 60.0, 70_000, 4400 / 60.0)) }).Count);

    // 5000 ± 5 % begins at 4750.
    [Theory]
    [InlineData("5000", 4800, 0)]
    [InlineData("5000", 4700, 1)]
    public void A_cruise_beyond_the_redline_is_asked_about(string cruise, double redline, int findings)
        => Assert.Equal(findings, Look(InventedCar.Plain with { Engine = Turning(redline, null, null) }, cruise).Count);

    // 800 of 1500 kg are 53.3 %.
    [Theory]
    [InlineData(0.58, 0)]
    [InlineData(0.60, 1)]
    [InlineData(0.47, 1)]
    [InlineData(1.00, 1)]
    public void A_share_that_the_axle_masses_contradict_is_asked_about(double share, int findings)
        => Assert.Equal(findings, Look(InventedCar.Plain with { Load = Told(share), AxleMasses = Weighed(700, 800) }).Count);

    [Fact]
    public void All_wheels_driven_contradict_no_axle()
        => Assert.Empty(Look(InventedCar.Plain with { FrontAxle = InventedCar.Axle(4.1), TransferCase = new("case", null, null), Load = Told(1), AxleMasses = Weighed(700, 800) }));

    // 620 + 560 are 1180 of 1280 kg; three steps of 20 kg are no contradiction.
    [Theory]
    [InlineData("whole 1280 kg", 1)]
    [InlineData("whole 1240 kg", 0)]
    public void A_weighing_that_contradicts_itself_is_asked_about(string whole, int findings)
    {
        var weighing = Weighing.Of([.. new[] { "front 620 kg", "rear 560 kg", whole }.Select(text => WeighReading.Read(text).OrRefuse())], 20);
        var found = Look(InventedCar.Plain with { AxleMasses = new(InventedCar.Exactly(weighing.Front!), InventedCar.Exactly(weighing.Rear!)) { Weighed = weighing } });

        Assert.Equal(findings, found.Count);
        Assert.All(found, finding => Assert.Equal("Weighed in one the vehicle is 1280 kg, both axles together 1180 kg; the masses are taken as no surer than that.", finding.Says));
    }

    // Both axles laden carry 1500 kg: 5 % more are another day's load, half of it is a vehicle without its payload.
    [Theory]
    [InlineData(1570, 0)]
    [InlineData(1580, 1)]
    [InlineData(760, 0)]
    [InlineData(740, 1)]
    public void A_mass_as_driven_that_the_laden_axles_contradict_is_asked_about(double mass, int findings)
    {
        var found = Look(InventedCar.Plain with { Load = new() { Mass = InventedCar.Exactly(mass) }, AxleMasses = Weighed(700, 800) });

        Assert.Equal(findings, found.Count);
        Assert.All(found, finding => Assert.Equal((Verdict.Watch, $"As it is driven the vehicle's mass is {mass:0} kg, both axles laden carry 1500 kg together: more than another load on another day explains."), (finding.Verdict, finding.Says)));
    }

    // Points known to 3 % (u), so to 5.9 % at 95 %: 240 N·m passes 200 and 220, and may be 230. 2π · 4000/60 · 230 = 96.3 kW.
    [Theory]
    [InlineData(200, 3000, "The torque points make 240 ± 15 N·m, more than the peak torque of 200 N·m that is told.")]
    [InlineData(230, 3000, null)]
    [InlineData(260, 3000, "At 3000 rev/min the torque points make 240 ± 15 N·m, less than the peak torque of 260 N·m that is told for there.")]
    [InlineData(260, 5000, null)]
    public void Torque_points_that_contradict_the_told_peak_are_asked_about(double told, double at, string? says)
    {
        var engine = new Engine("six") { Torque = TorqueCurve.Of([new(1500 / 60.0, 180), new(3000 / 60.0, 240), new(4000 / 60.0, 230)]), ToldTorque = new(told, at / 60) };

        Assert.Equal(says, Look(InventedCar.Plain with { Engine = engine }).SingleOrDefault()?.Says);
    }

    [Fact]
    public void Power_that_passes_the_told_peak_is_asked_about()
    {
        var engine = new Engine("six") { Torque = TorqueCurve.Of([new(1500 / 60.0, 180), new(3000 / 60.0, 240), new(4000 / 60.0, 230)]), ToldPower = new(80_000, null) };

        Assert.StartsWith("The torque points make 96 ± 6 kW, more than the peak power of 80 kW", Assert.Single(Look(InventedCar.Plain with { Engine = engine })).Says, StringComparison.Ordinal);
    }

    // P235/75R15 stands 733.5 ± 14 mm high: half of it is 367 mm.
    [Theory]
    [InlineData(0.345, 0)]
    [InlineData(0.370, 0)]
    [InlineData(0.400, 1)]
    public void A_loaded_radius_above_half_the_diameter_is_asked_about(double radius, int findings)
    {
        var tyres = InventedTruck.Whole.Tyres! with { LoadedRadius = InventedCar.Exactly(radius) };
        var found = Look(InventedCar.Plain with { Tyres = tyres });

        Assert.Equal(findings, found.Count);
        Assert.All(found, finding => Assert.Contains("400 mm is larger than half the diameter of the P235/75R15 105S, 367", finding.Says, StringComparison.Ordinal));
        Assert.Equal(2 * findings, Look(InventedCar.Plain with { Tyres = tyres with { FrontPair = tyres } }).Count);
    }

    private static Engine Turning(double redline, double? pull, TorqueCurve? torque) => new("six", Redline: InventedCar.Exactly(redline / 60))
    {
        LowestPull = pull is { } n ? InventedCar.Exactly(n / 60) : null,
        Torque = torque,
    };

    private static Gearing.RoadLoad.VehicleLoad Told(double share) => new() { DrivenShare = new(share, Source.OwnersWord) };

    private static AxleMasses Weighed(double front, double rear) => new(InventedCar.Exactly(front), InventedCar.Exactly(rear));

    private static List<Finding> Look(Driveline car, string? cruise = null)
        => [.. new NumbersAgreeCheck().Look(car, cruise is null ? OwnersGoals.None : OwnersGoals.None with { Cruise = [InventedCar.Goal("108 km/h", cruise)] })];
}
