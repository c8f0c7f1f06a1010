using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <summary>Clutch, pilot, perches and pinion: joints that are judged by numbers.</summary>
public sealed class JointMeasuresTests
{
    // 200 N·m at its peak, ± 3 % standard: 188 to 212. 1.2 times 212 is 254; 1.2 times 188 is 226.
    [Theory]
    [InlineData(260, Source.MakersData, Verdict.Fits)]
    [InlineData(225, Source.MakersData, Verdict.Watch)]
    [InlineData(180, Source.MakersData, Verdict.Clash)]
    [InlineData(180, Source.OwnersWord, Verdict.Watch)]
    public void A_clutch_passes_on_a_fifth_more_than_the_engine_gives(double rating, Source source, Verdict verdict)
        => Assert.Equal(verdict, Assert.Single(Look(new ClutchCheck(), Clutch(new(rating, source)))).Verdict);

    [Fact]
    public void A_clutch_too_weak_is_cured_by_a_rating()
    {
        var finding = Assert.Single(Look(new ClutchCheck(), Clutch(new(180, Source.MakersData))));

        Assert.Equal("The engine gives 200 ± 12 N·m, the clutch passes on 180 N·m.", finding.Says);
        Assert.Equal(["a clutch rated for 255 N·m or more"], finding.Cures);
        Assert.Empty(Look(new ClutchCheck(), Clutch(null)));
    }

    [Fact]
    public void A_rated_clutch_asks_for_the_engines_torque()
        => Assert.Equal(Verdict.Open, Assert.Single(Look(new ClutchCheck(), Clutch(new(180, Source.MakersData)) with { Engine = new("engine") })).Verdict);

    [Theory]
    [InlineData(15.05, 15.00, Verdict.Fits)]
    [InlineData(15.00, 15.00, Verdict.Fits)]
    [InlineData(15.30, 15.00, Verdict.Watch)]
    [InlineData(14.90, 15.00, Verdict.Clash)]
    public void A_spigot_runs_in_the_pilot_with_a_little_play(double bore, double spigot, Verdict verdict)
        => Assert.Equal(verdict, Assert.Single(Look(new PilotCheck(), Pilot(bore, spigot))).Verdict);

    [Fact]
    public void A_pilot_half_measured_asks_for_the_rest()
    {
        Assert.Equal("a pilot bearing with a bore of 15.00 mm", Assert.Single(Assert.Single(Look(new PilotCheck(), Pilot(14.9, 15))).Cures));
        Assert.Equal(["measure the input shaft's spigot with a caliper"], Assert.Single(Look(new PilotCheck(), Pilot(15, null))).Cures);
        Assert.Equal(["measure the pilot bearing's bore with a caliper"], Assert.Single(Look(new PilotCheck(), Pilot(null, 15))).Cures);
        Assert.Empty(Look(new PilotCheck(), Pilot(null, null)));
    }

    [Theory]
    [InlineData(1020, 1020, Verdict.Fits)]
    [InlineData(1024, 1020, Verdict.Watch)]
    [InlineData(1080, 1020, Verdict.Clash)]
    public void Perches_stand_where_the_springs_hang(double perches, double springs, Verdict verdict)
        => Assert.Equal(verdict, Assert.Single(Look(new PerchesCheck(), Hung(perches, springs))).Verdict);

    [Fact]
    public void Perches_are_welded_on_where_the_springs_are()
    {
        Assert.Equal(["perches welded on 1020 mm apart"], Assert.Single(Look(new PerchesCheck(), Hung(1080, 1020))).Cures);
        Assert.Equal(Verdict.Open, Assert.Single(Look(new PerchesCheck(), Hung(1080, null))).Verdict);
        Assert.Empty(Look(new PerchesCheck(), Hung(null, null)));
    }

    // Pad 1° and pinion 2° over the perches make 3°; the output lies at 3.5°, within the degree, or at 6°, three off.
    [Theory]
    [InlineData(3.5, Verdict.Fits)]
    [InlineData(6, Verdict.Watch)]
    [InlineData(1, Verdict.Watch)]
    public void The_pinion_will_lie_parallel_to_the_output(double output, Verdict verdict)
        => Assert.Equal(verdict, Assert.Single(Look(new PinionAngleCheck(), Pinion(output, 1))).Verdict);

    [Fact]
    public void A_wedge_turns_the_pinion_back()
    {
        Assert.Equal(["wedges of 3.0° at the perches that turn the pinion's front end up"], Assert.Single(Look(new PinionAngleCheck(), Pinion(6, 1))).Cures);
        Assert.Equal(["wedges of 2.0° at the perches that turn the pinion's front end down"], Assert.Single(Look(new PinionAngleCheck(), Pinion(1, 1))).Cures);
    }

    [Fact]
    public void The_springs_angle_is_asked_for() => Assert.Contains("lay an angle gauge on the spring", Assert.Single(Assert.Single(Look(new PinionAngleCheck(), Pinion(3, null))).Cures), StringComparison.Ordinal);

    private static Driveline Clutch(Known? rating) => InventedCar.Plain with
    {
        Engine = new("four") { Torque = TorqueCurve.Of([TorquePoint.Read("1000:180 Nm").OrRefuse(), TorquePoint.Read("3000:200 Nm").OrRefuse()]) },
        Transmission = InventedCar.Plain.Transmission! with { Front = new() { ClutchRating = rating } },
    };

    private static Driveline Pilot(double? bore, double? spigot) => InventedCar.Plain with
    {
        Engine = new("engine") { Rear = new() { PilotBore = Millimetres(bore) } },
        Transmission = InventedCar.Plain.Transmission! with { Front = new() { Spigot = Millimetres(spigot) } },
    };

    private static Driveline Hung(double? perches, double? springs) => InventedCar.Plain with
    {
        RearAxle = InventedCar.Axle(4.1) with { Perches = Millimetres(perches) },
        RearHanging = new(Millimetres(springs)),
    };

    private static Driveline Pinion(double output, double? pad) => InventedCar.Plain with
    {
        Propshaft = new("shaft", new ShaftPiece()) { Line = [new(Degrees(output)), new(null), new(null)] },
        RearAxle = InventedCar.Axle(4.1) with { PinionToPerch = Degrees(2) },
        RearHanging = new(Pad: pad is { } known ? Degrees(known) : null),
    };

    private static Known? Millimetres(double? value) => value is { } known ? InventedShaft.Known(known / 1000) : null;

    private static Known Degrees(double value) => InventedShaft.Known(Units.Degree.ToBase(value));

    private static List<Finding> Look(ICheck check, Driveline car) => [.. check.Look(car, CheckCase.NoGoals)];
}
