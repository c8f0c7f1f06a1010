using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Quantities;

/// <summary>What is made without being read from text is refused alike.</summary>
public sealed class ConstructorsTests
{
    private static readonly Typed Speed = QuantityText.Read("100 km/h", Kind.Speed).OrRefuse();
    private static readonly Typed Turns = QuantityText.Read("2500 rpm", Kind.Rotation).OrRefuse();

    [Theory]
    [InlineData(0, 0, 20, "turns must be more than zero")]
    [InlineData(10, 0, double.NaN, "turns must be more than zero")]
    [InlineData(10, 0, 10_001, "more than 10 000 turns")]
    [InlineData(0.2, 0, 20, "half")]
    public void Turns_that_nobody_counts(double left, double right, double propshaft, string says)
        => Says(says, () => new TurnReading(left, right, propshaft, Wheels.OneHeld, "a count"));

    [Fact]
    public void Wheels_that_cancel() => Says("cancel", () => new TurnReading(10, -10, 20, Wheels.Each, "a count"));

    [Theory]
    [InlineData(0, 2, "at most 1000")]
    [InlineData(double.NaN, 2, "at most 1000")]
    [InlineData(1, 0.2, "0.8 to 6 m")]
    [InlineData(1, double.NaN, "0.8 to 6 m")]
    public void A_roll_no_road_tyre_makes(double turns, double distance, string says) => Says(says, () => new RollReading(turns, distance, "a roll"));

    [Fact]
    public void A_goal_at_no_road_speed() => Says("500 km/h", () => new CruiseGoal(Speed with { Value = -1 }, Turns, Window.AtMost(40), null));

    [Fact]
    public void A_goal_at_no_engine_speed() => Says("20 000 rev/min", () => new CruiseGoal(Speed, Turns with { Value = double.NaN }, Window.AtMost(40), null));

    [Fact]
    public void A_goal_that_wants_nothing() => Says("lower limit", () => new CruiseGoal(Speed, Turns, new Window(45, 40), null));

    [Fact]
    public void A_tyre_of_no_width_or_rim_or_more_wear_than_tread()
    {
        var size = TyreSizeText.Read("205/70R15").OrRefuse();

        Says("30 to 1000 mm", () => size with { SectionWidth = 0 });
        Says("100 to 1500 mm", () => size with { RimDiameter = double.NaN });
        Says("0 to 50 mm", () => size with { Worn = -0.001 });
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-4.1)]
    public void A_part_with_a_number_that_is_not_above_zero(double number)
    {
        var known = new Known(number, Source.OwnersWord);

        Says("A gear ratio is more than 0", () => new Gear("1", known));
        Says("An axle ratio is more than 0", () => new Axle("axle", known));
        Says("An axle ratio is more than 0", () => new Axle("axle", null) with { Ratio = known });
        Says("A hub reduction is more than 0", () => new Axle("axle", null) { HubReduction = known });
        Says("An overdrive ratio is more than 0", () => new Overdrive("unit", known));
        Says("A transfer case ratio is more than 0", () => new TransferCase("case", known, null));
        Says("A transfer case ratio is more than 0", () => new TransferCase("case", null, known));
        Says("A rolling circumference is more than 0", () => new TyreSet("tyres", known, null));
        Says("A redline is more than 0", () => new Engine("engine", Redline: known));
        Says("A mass is more than 0", () => new VehicleLoad { Mass = known });
        Says("A stall speed is more than 0", () => new Converter(true, known));
        Says("A stall torque ratio is more than 0", () => new Converter(true, null, known));
        Says("An axle's mass is more than 0", () => new AxleMasses(known));
        Says("An axle's mass is more than 0", () => new AxleMasses(null, known));
        Says("A bolt circle is more than 0", () => new Bolting(PitchCircle: known));
        Says("A centre bore is more than 0", () => new Bolting(Bore: known));
        Says("A rim width is more than 0", () => new Wheel(known));
        Says("torque is more than 0", () => new TorquePoint(20, number));
        Says("engine speed is more than 0", () => new TorquePoint(number, 180));
    }

    /// <summary>What is made of one number, how its refusal begins, and whether nothing is impossible too.</summary>
    private sealed record Made(Func<double, object> Of, string Says, bool ZeroCannotBe = true);

    private static readonly Tube Shaft = new(0.0762, 0.0021, 1.3);

    private static readonly Dictionary<string, Made> All = new()
    {
        ["count, wheel turns"] = new(x => new TurnReading(x, 0, 20, Wheels.OneHeld, "a count"), "turns"),
        ["count, propshaft turns"] = new(x => new TurnReading(10, 0, x, Wheels.OneHeld, "a count"), "turns"),
        ["roll, turns"] = new(x => new RollReading(x, 2, "a roll"), "at most 1000"),
        ["roll, distance"] = new(x => new RollReading(1, x, "a roll"), "0.8 to 6 m"),
        ["count, read to"] = new(x => TurnCount.Of([new(10, 0, 41, Wheels.OneHeld, "a count")], new(x, 0.02)), "between 0 and 1 turn", false),
        ["count, mark"] = new(x => TurnCount.Of([new(10, 0, 41, Wheels.OneHeld, "a count")], new(0.25, x)), "0 to 0.5 turn", false),
        ["roll, tape"] = new(x => RollOut.Of([new(3, 6.1, "a roll")], new(true, Tape: x)), "0 to 100 mm", false),
        ["roll, mark"] = new(x => RollOut.Of([new(3, 6.1, "a roll")], new(true, Align: x)), "0 to 0.5 turn", false),
        ["ratio of an axle"] = new(x => RatioRange.Axle.Checked(x), "between 1.5 and 12"),
        ["ratio of a gear"] = new(x => RatioRange.Gear.Checked(x), "between 0.3 and 20"),
        ["quoted ratio"] = new(x => new QuotedRatio(x, 0.005, "4.10"), "A ratio is more than 0"),
        ["quoted ratio, last digit"] = new(x => new QuotedRatio(4.1, x, "4.10"), "0 or more", false),
        ["two-speed axle, high"] = new(x => TwoSpeedAxle.Counted(x, 9.04), "more than 0"),
        ["two-speed axle, low"] = new(x => TwoSpeedAxle.Counted(6.5, x), "more than 0"),
        ["two-speed axle, step"] = new(x => new TwoSpeedAxle(6.5, x), "more than 0"),
        ["road test, road speed"] = new(x => RoadTest.AxleRatio(x, 40, 1, 2), "more than 0"),
        ["road test, engine speed"] = new(x => RoadTest.AxleRatio(22, x, 1, 2), "more than 0"),
        ["road test, instrument"] = new(x => RoadTest.AxleRatio(22, 40, 1, 2, new(x)), "0 or more", false),
        ["cruise, road speed"] = new(x => new CruiseGoal(Speed with { Value = x }, Turns, Window.AtMost(40), null), "at most 500 km/h"),
        ["cruise, engine speed"] = new(x => new CruiseGoal(Speed, Turns with { Value = x }, Window.AtMost(40), null), "at most 20 000 rev/min"),
        ["hill"] = new(x => new HillGoal(Speed with { Value = x }, Speed, null), "at most 1"),
        ["speed of a hill"] = new(x => new HillGoal(Speed with { Value = 0.06 }, Speed with { Value = x }, null), "at most 138.889"),
        ["hill start"] = new(x => new HillStartGoal(Speed with { Value = x }), "at most 1"),
        ["top speed"] = new(x => new TopSpeedGoal(Speed with { Value = x }), "at most 138.889"),
        ["overall low"] = new(x => new OverallLowGoal(Speed with { Value = x }), "at most 1000"),
        ["tyre, section"] = new(x => TyreSizeText.Read("205/70R15").OrRefuse() with { SectionWidth = x }, "30 to 1000 mm"),
        ["tyre, rim"] = new(x => TyreSizeText.Read("205/70R15").OrRefuse() with { RimDiameter = x }, "100 to 1500 mm"),
        ["tyre, wear"] = new(x => TyreSizeText.Read("205/70R15").OrRefuse() with { Worn = x }, "0 to 50 mm", false),
        ["tyre, growth"] = new(x => SpeedGrowth.At(Construction.Bias, x), "0 to 250 km/h", false),
        ["rims of a metric tyre"] = new(x => RimWidth.OfMetric(x, 0.65), "A section width"),
        ["rims of a metric tyre, aspect"] = new(x => RimWidth.OfMetric(0.205, x), "An aspect ratio"),
        ["rims of a flotation tyre"] = new(x => RimWidth.OfFlotation(x), "A section width"),
        ["rims of a numeric tyre"] = new(x => RimWidth.OfNumeric(x), "A section width"),
        ["section on a rim"] = new(x => SectionOnRim.Of(TyreSizeText.Read("205/70R15").OrRefuse(), x), "2 to 23 in"),
        ["tube, outer"] = new(x => new Tube(x, 0.0021, 1.3), "up to 300 mm"),
        ["tube, wall"] = new(x => new Tube(0.0762, x, 1.3), "at most half of that"),
        ["tube, length"] = new(x => new Tube(0.0762, 0.0021, x), "up to 4 m"),
        ["longest shaft"] = new(x => CriticalSpeed.LongestFor(Shaft, x), "more than 0"),
        ["thinnest shaft"] = new(x => CriticalSpeed.ThinnestFor(Shaft, x), "more than 0"),
        ["torque"] = new(x => new TorquePoint(20, x), "more than 0"),
        ["torque's engine speed"] = new(x => new TorquePoint(x, 180), "more than 0"),
        ["peak torque"] = new(x => PlausibleCurve.From(x, 40, 77_000, 75), "more than zero"),
        ["barometer"] = new(x => new TestAir(x, 25), "40 to 120 kPa"),
        ["pressure of the air"] = new(x => new Atmosphere(288, x), "more than 0"),
        ["temperature of the air"] = new(x => new Atmosphere(x, 101_325), "more than 0"),
        ["mass to move"] = new(x => new DrivingResistance(x, 0.014, 0.8, 1.2), "A mass is more than 0"),
        ["rolling resistance"] = new(x => new DrivingResistance(1500, x, 0.8, 1.2), "0 or more", false),
        ["drag area"] = new(x => new DrivingResistance(1500, 0.014, x, 1.2), "0 or more", false),
        ["air density"] = new(x => new DrivingResistance(1500, 0.014, 0.8, x), "0 or more", false),
        ["chord of a bolt circle"] = new(x => BoltCircle.FromChord(x, 5, Chord.Adjacent), "50 to 400 mm"),
        ["correction of a speedometer"] = new(x => SpeedometerDrive.Gears(8, 21, correction: x), "0.01 to 100"),
        ["pulses of a sender"] = new(x => SpeedometerDrive.Pulses(x), "up to 1000 pulses"),
        ["step of an error curve"] = new(x => ErrorCurve.Of(Reading.Of(1, 1), x), "at most 100 km/h"),
        ["gear's ratio"] = new(x => new Gear("1", new(x, Source.OwnersWord)), "A gear ratio is more than 0"),
        ["reverse"] = new(x => new Transmission("box", []) { Reverse = new(x, Source.OwnersWord) }, "A reverse ratio is more than 0"),
        ["low of an axle"] = new(x => new Axle("axle", null) { LowStep = new(x, Source.OwnersWord) }, "more than 0"),
        ["loaded radius"] = new(x => new TyreSet("tyres", null, null) { LoadedRadius = new(x, Source.OwnersWord) }, "A loaded radius is more than 0"),
        ["axle's mass"] = new(x => new AxleMasses(new(x, Source.OwnersWord)), "An axle's mass is more than 0"),
        ["rim width"] = new(x => new Wheel(new(x, Source.OwnersWord)), "A rim width is more than 0"),
    };

    public static TheoryData<string> Numbers => [.. All.Keys];

    // No Measured holds what is no number, so what is made of one never meets it: that is refused a step before.
    [Theory]
    [MemberData(nameof(Numbers))]
    public void The_impossible_is_refused_with_what_it_is_and_its_range(string name)
    {
        var (made, says, zeroCannotBe) = All[name];
        foreach (var impossible in (double[])[double.NaN, double.PositiveInfinity, double.NegativeInfinity, -1, -1e300, .. zeroCannotBe ? [0.0] : Array.Empty<double>()])
        {
            var thrown = Record.Exception(() => made(impossible));

            if (double.IsFinite(impossible) || thrown is RefusedException)
            {
                var refused = Assert.IsType<RefusedException>(thrown);
                Assert.Contains(says, refused.Message, StringComparison.Ordinal);
                Assert.NotEmpty(refused.Refusal.Code);
                Assert.NotEmpty(refused.Refusal.Example);
            }
            else
            {
                Assert.StartsWith("A value is finite.", Assert.IsType<ArgumentOutOfRangeException>(thrown).Message, StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(int.MinValue)]
    [InlineData(1_000_000)]
    public void Teeth_that_no_gear_has(int teeth)
    {
        Says("teeth", () => new Teeth(teeth, 10));
        Says("teeth", () => new Teeth(41, teeth));
        Says("teeth", () => new GearMesh(teeth, 19));
        Says("teeth", () => new Planetary(teeth, 20));
        Says("teeth", () => new Planetary(75, teeth));
        Says("1 to 60 teeth", () => SpeedometerDrive.Gears(teeth, 21));
        Says("3 to 99 teeth", () => SpeedometerDrive.Gears(8, teeth));
        Says("3 to 10 studs", () => BoltCircle.Factor(teeth, Chord.Adjacent));
    }

    [Fact]
    public void A_wheel_of_more_studs_than_there_are() => Says("3 to 10 studs", () => new Bolting(12));

    // Asked twice, one set of tyres is one set: its error cancels against itself. Two sets of one size are two.
    [Fact]
    public void A_tyre_keeps_its_error()
    {
        var (one, other) = (TyreSizeText.Read("205/70R15").OrRefuse(), TyreSizeText.Read("205/70R15").OrRefuse());

        Assert.True((one.RollingCircumference / one.RollingCircumference).IsExact);
        Assert.False((one.RollingCircumference / other.RollingCircumference).IsExact);
        Assert.Equal(one, other);
    }

    private static void Says(string part, Func<object> make) => Assert.Contains(part, Assert.Throws<RefusedException>(make).Message, StringComparison.Ordinal);
}
