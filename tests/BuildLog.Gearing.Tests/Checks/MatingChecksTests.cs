using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <summary>What bolts, slides and turns together, as the shop calls it.</summary>
public sealed class MatingChecksTests
{
    [Theory]
    [InlineData("Corvane six", "CORVANE  SIX ")]
    [InlineData("6 × M10", "6 x m10")]
    [InlineData("6 * M10", "6X M10")]
    [InlineData("A‑4", "a-4")]
    public void The_same_pattern_fits_however_it_is_spelt(string engine, string box)
        => Assert.Equal(Verdict.Fits, Assert.Single(Look(new BellHousingCheck(), Bell(engine, box))).Verdict);

    [Fact]
    public void Another_pattern_clashes_and_an_adapter_cures_it()
    {
        var finding = Assert.Single(Look(new BellHousingCheck(), Bell("Corvane six", "Delmere light")));

        Assert.Equal((Verdict.Clash, Because.Outside), (finding.Verdict, finding.Because));
        Assert.Equal("The engine's bell-housing pattern is Corvane six, the gearbox's bell-housing pattern Delmere light.", finding.Says);
        Assert.Equal(["an adapter plate from Corvane six to Delmere light", "a bell housing of the pattern Corvane six"], finding.Cures);
        Assert.Equal([Position.Engine, Position.Transmission], finding.Between);
    }

    [Fact]
    public void One_side_known_asks_for_the_other_and_neither_known_says_nothing()
    {
        var finding = Assert.Single(Look(new BellHousingCheck(), Bell("Corvane six", null)));

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Equal("Whether the engine's bell-housing pattern and the gearbox's bell-housing pattern go together cannot be said: the gearbox's bell-housing pattern is not known.", finding.Says);
        Assert.Equal(["hold the bell housing against an engine that is known, or take the pattern on card"], finding.Cures);
        Assert.Empty(Look(new BellHousingCheck(), Bell(null, null)));
        Assert.Empty(Look(new BellHousingCheck(), Bell("Corvane six", "Corvane six") with { Engine = null }));
    }

    [Theory]
    [InlineData(Plate.Flywheel, false, Verdict.Fits)]
    [InlineData(Plate.Flexplate, false, Verdict.Clash)]
    [InlineData(Plate.Flexplate, true, Verdict.Fits)]
    [InlineData(Plate.Flywheel, true, Verdict.Clash)]
    public void A_clutch_wants_a_flywheel_and_a_converter_a_flexplate(Plate plate, bool automatic, Verdict verdict)
        => Assert.Equal(verdict, Assert.Single(Look(new FlywheelCheck(), Car(new() { Plate = plate }, new(), automatic))).Verdict);

    [Fact]
    public void What_a_gearbox_needs_is_no_look_at_the_engine() => Assert.Empty(Look(new FlywheelCheck(), Car(new(), new())));

    // Count and size decide; a size written in other units may be the same.
    [Theory]
    [InlineData("26 × 1 1/8 in", "26x1 1/8in", Verdict.Fits)]
    [InlineData("26 × 1 1/8 in", "26 × 29 mm", Verdict.Watch)]
    [InlineData("26 × 1 1/8 in", "10 × 1 1/8 in", Verdict.Clash)]
    [InlineData("coarse", "fine", Verdict.Clash)]
    public void A_disc_slides_on_as_many_splines(string input, string disc, Verdict verdict)
    {
        var finding = Assert.Single(Look(new InputSplineCheck(), Car(new(), new() { InputSpline = input, DiscSpline = disc })));

        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.Clash) Assert.Equal([$"a clutch disc with a spline of {input}"], finding.Cures);
    }

    [Fact]
    public void The_starter_sits_where_the_bell_housing_is_open()
    {
        var finding = Assert.Single(Look(new StarterCheck(), Car(new() { Starter = StarterSide.Left }, new() { Starter = StarterSide.Right })));

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.Equal("a bell housing with its starter opening on the left", finding.Cures[0]);
        Assert.Equal(Verdict.Fits, Assert.Single(Look(new StarterCheck(), Car(new() { Starter = StarterSide.Left }, new() { Starter = StarterSide.Left }))).Verdict);
    }

    [Theory]
    [InlineData(Sense.Clockwise, Sense.Clockwise, Verdict.Fits)]
    [InlineData(Sense.Anticlockwise, Sense.Clockwise, Verdict.Clash)]
    public void An_engine_turns_the_way_the_gearbox_was_made_for(Sense engine, Sense box, Verdict verdict)
        => Assert.Equal(verdict, Assert.Single(Look(new RotationCheck(), Car(new() { Turns = engine }, new() { Turns = box }))).Verdict);

    [Fact]
    public void The_propshaft_goes_to_the_last_unit_before_it()
    {
        var plain = InventedCar.Plain with { Propshaft = new("shaft", new ShaftPiece()) { FrontEnd = "flange 4 × 80 mm" } };
        var behindBox = plain with { Transmission = plain.Transmission! with { Output = "flange 4 x 80 mm" } };

        Assert.Equal(Verdict.Fits, Assert.Single(Look(new OutputFlangeCheck(), behindBox)).Verdict);
        var behindUnit = Assert.Single(Look(new OutputFlangeCheck(), behindBox with { Overdrive = new("unit", null) { Output = "flange 4 × 76 mm" } }));
        Assert.Equal((Verdict.Clash, Position.Overdrive), (behindUnit.Verdict, behindUnit.Between[0]));
        Assert.Equal(["a propshaft whose front end is flange 4 × 76 mm"], behindUnit.Cures);
    }

    [Fact]
    public void A_transfer_case_has_an_output_for_each_shaft()
    {
        var shaft = new Propshaft("shaft", new ShaftPiece()) { FrontEnd = "A" };
        var car = InventedCar.Plain with { TransferCase = new("case", null, null) { Output = "A", FrontOutput = "B" }, Propshaft = shaft, FrontPropshaft = shaft };

        Assert.Equal([Verdict.Fits, Verdict.Clash], Look(new OutputFlangeCheck(), car).Select(finding => finding.Verdict));
    }

    [Fact]
    public void A_slip_yoke_with_as_many_splines_is_tried_on()
        => Assert.Equal(Verdict.Watch, Assert.Single(Look(new OutputFlangeCheck(), InventedCar.Plain with
        {
            Transmission = InventedCar.Plain.Transmission! with { Output = "27 splines" },
            Propshaft = new("shaft", new ShaftPiece()) { FrontEnd = "27 splines, 33 mm" },
        })).Verdict);

    [Fact]
    public void The_axles_pinion_takes_the_shafts_flange()
    {
        var car = InventedCar.Plain with
        {
            Propshaft = new("shaft", new ShaftPiece()) { RearEnd = "flange 4 × 80 mm" },
            RearAxle = InventedCar.Axle(4.1) with { PinionFlange = "flange 4 × 76 mm" },
        };
        var finding = Assert.Single(Look(new PinionFlangeCheck(), car));

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.Equal(["a propshaft whose axle end is flange 4 × 76 mm", "a pinion flange that is flange 4 × 80 mm"], finding.Cures);
    }

    [Theory]
    [InlineData(SpeedometerFeed.Cable, SpeedometerFeed.Cable, Verdict.Fits)]
    [InlineData(SpeedometerFeed.Pulses, SpeedometerFeed.Cable, Verdict.Clash)]
    [InlineData(SpeedometerFeed.None, SpeedometerFeed.Pulses, Verdict.Clash)]
    public void A_speedometer_needs_its_kind_of_drive(SpeedometerFeed box, SpeedometerFeed dial, Verdict verdict)
    {
        var finding = Assert.Single(Look(new SpeedometerDriveCheck(), Dial(box, new Speedometer("dial") { Takes = dial })));

        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal([Position.Transmission, Position.Speedometer], finding.Between);
    }

    [Fact]
    public void Gears_mean_a_cable_and_a_wheel_needs_no_gearbox()
    {
        Assert.Equal(Verdict.Clash, Assert.Single(Look(new SpeedometerDriveCheck(), Dial(SpeedometerFeed.Pulses, new("dial", null, SpeedometerDrive.Gears(8, 21))))).Verdict);
        Assert.Empty(Look(new SpeedometerDriveCheck(), Dial(SpeedometerFeed.None, new("dial", null, SpeedometerDrive.Pulses(8, Pickup.Wheel)))));
        Assert.Empty(Look(new SpeedometerDriveCheck(), Dial(null, new("dial", null, SpeedometerDrive.Gears(8, 21)))));
    }

    [Fact]
    public void A_missing_drive_is_cured_by_a_sender()
        => Assert.Equal(
            ["a drive for pulses at the gearbox's tail", "a sender at the propshaft or a wheel"],
            Assert.Single(Look(new SpeedometerDriveCheck(), Dial(SpeedometerFeed.None, new("dial") { Takes = SpeedometerFeed.Pulses }))).Cures);

    private static Driveline Bell(string? engine, string? box) => Car(new() { BellHousing = engine }, new() { BellHousing = box });

    private static Driveline Dial(SpeedometerFeed? box, Speedometer dial)
        => InventedCar.Plain with { Transmission = InventedCar.Plain.Transmission! with { SpeedometerFeed = box }, Speedometer = dial };

    private static Driveline Car(EngineRear rear, GearboxFront front, bool automatic = false) => InventedCar.Plain with
    {
        Engine = new("engine") { Rear = rear },
        Transmission = InventedCar.Plain.Transmission! with { Front = front, Converter = automatic ? new Converter(true) : null },
    };

    private static List<Finding> Look(ICheck check, Driveline car) => [.. check.Look(car, CheckCase.NoGoals)];
}
