using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Speeds;
using BuildLog.Gearing.Tyres;
using BuildLog.Gearing.YardCards;
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

    private static readonly SpeedRelation Relation = new() { EngineSpeed = 40, Gear = 1, Axle = 4.1, Circumference = 2 };

    private static readonly Tube Shaft = new(0.0762, 0.0021, 1.3);

    private static readonly Dictionary<string, Made> All = new()
    {
        ["TurnReading.left"] = new(x => new TurnReading(x, 0, 20, Wheels.OneHeld, "a count"), "turns"),
        ["TurnReading.propshaft"] = new(x => new TurnReading(10, 0, x, Wheels.OneHeld, "a count"), "turns"),
        ["RollReading.turns"] = new(x => new RollReading(x, 2, "a roll"), "at most 1000"),
        ["RollReading.distance"] = new(x => new RollReading(1, x, "a roll"), "0.8 to 6 m"),
        ["CountPrecision.ReadTo"] = new(x => TurnCount.Of([new(10, 0, 41, Wheels.OneHeld, "a count")], new(x, 0.02)), "between 0 and 1 turn", false),
        ["CountPrecision.Align"] = new(x => TurnCount.Of([new(10, 0, 41, Wheels.OneHeld, "a count")], new(0.25, x)), "0 to 0.5 turn", false),
        ["RollOutPrecision.Tape"] = new(x => RollOut.Of([new(3, 6.1, "a roll")], new(true, Tape: x)), "0 to 100 mm", false),
        ["RollOutPrecision.Align"] = new(x => RollOut.Of([new(3, 6.1, "a roll")], new(true, Align: x)), "0 to 0.5 turn", false),
        ["ratio of an axle"] = new(x => RatioRange.Axle.Checked(x), "between 1.5 and 12"),
        ["ratio of a gear"] = new(x => RatioRange.Gear.Checked(x), "between 0.3 and 20"),
        ["QuotedRatio.Ratio"] = new(x => new QuotedRatio(x, 0.005, "4.10"), "A ratio is more than 0"),
        ["QuotedRatio.HalfLastDigit"] = new(x => new QuotedRatio(4.1, x, "4.10"), "0 or more", false),
        ["TwoSpeedAxle.High"] = new(x => TwoSpeedAxle.Counted(x, 9.04), "more than 0"),
        ["two-speed axle, low"] = new(x => TwoSpeedAxle.Counted(6.5, x), "more than 0"),
        ["TwoSpeedAxle.Step"] = new(x => new TwoSpeedAxle(6.5, x), "more than 0"),
        ["road test, road speed"] = new(x => RoadTest.AxleRatio(x, 40, 1, 2), "more than 0"),
        ["road test, engine speed"] = new(x => RoadTest.AxleRatio(22, x, 1, 2), "more than 0"),
        ["cruise, road speed"] = new(x => new CruiseGoal(Speed with { Value = x }, Turns, Window.AtMost(40), null), "at most 500 km/h"),
        ["cruise, engine speed"] = new(x => new CruiseGoal(Speed, Turns with { Value = x }, Window.AtMost(40), null), "at most 20 000 rev/min"),
        ["hill"] = new(x => new HillGoal(Speed with { Value = x }, Speed, null), "at most 1"),
        ["speed of a hill"] = new(x => new HillGoal(Speed with { Value = 0.06 }, Speed with { Value = x }, null), "at most 138.889"),
        ["hill start"] = new(x => new HillStartGoal(Speed with { Value = x }), "at most 1"),
        ["top speed"] = new(x => new TopSpeedGoal(Speed with { Value = x }), "at most 138.889"),
        ["overall low"] = new(x => new OverallLowGoal(Speed with { Value = x }), "at most 1000"),
        ["TyreSize.SectionWidth"] = new(x => TyreSizeText.Read("205/70R15").OrRefuse() with { SectionWidth = x }, "30 to 1000 mm"),
        ["TyreSize.RimDiameter"] = new(x => TyreSizeText.Read("205/70R15").OrRefuse() with { RimDiameter = x }, "100 to 1500 mm"),
        ["TyreSize.Worn"] = new(x => TyreSizeText.Read("205/70R15").OrRefuse() with { Worn = x }, "0 to 50 mm", false),
        ["tyre, growth"] = new(x => SpeedGrowth.At(Construction.Bias, x), "0 to 250 km/h", false),
        ["rims of a metric tyre"] = new(x => RimWidth.OfMetric(x, 0.65), "A section width"),
        ["rims of a metric tyre, aspect"] = new(x => RimWidth.OfMetric(0.205, x), "An aspect ratio"),
        ["rims of a flotation tyre"] = new(x => RimWidth.OfFlotation(x), "A section width"),
        ["rims of a numeric tyre"] = new(x => RimWidth.OfNumeric(x), "A section width"),
        ["section on a rim"] = new(x => SectionOnRim.Of(TyreSizeText.Read("205/70R15").OrRefuse(), x), "2 to 23 in"),
        ["Tube.outer"] = new(x => new Tube(x, 0.0021, 1.3), "up to 300 mm"),
        ["Tube.wall"] = new(x => new Tube(0.0762, x, 1.3), "at most half of that"),
        ["Tube.length"] = new(x => new Tube(0.0762, 0.0021, x), "up to 4 m"),
        ["longest shaft"] = new(x => CriticalSpeed.LongestFor(Shaft, x), "more than 0"),
        ["thinnest shaft"] = new(x => CriticalSpeed.ThinnestFor(Shaft, x), "more than 0"),
        ["TorquePoint.Torque"] = new(x => new TorquePoint(20, x), "more than 0"),
        ["TorquePoint.EngineSpeed"] = new(x => new TorquePoint(x, 180), "more than 0"),
        ["peak torque"] = new(x => PlausibleCurve.From(x, 40, 77_000, 75), "more than zero"),
        ["TestAir.DryPressure"] = new(x => new TestAir(x, 25), "40 to 120 kPa"),
        ["Atmosphere.Pressure"] = new(x => new Atmosphere(288, x), "more than 0"),
        ["Atmosphere.Temperature"] = new(x => new Atmosphere(x, 101_325), "more than 0"),
        ["DrivingResistance.Mass"] = new(x => new DrivingResistance(x, 0.014, 0.8, 1.2), "A mass is more than 0"),
        ["DrivingResistance.RollingResistance"] = new(x => new DrivingResistance(1500, x, 0.8, 1.2), "0 or more", false),
        ["DrivingResistance.DragArea"] = new(x => new DrivingResistance(1500, 0.014, x, 1.2), "0 or more", false),
        ["DrivingResistance.AirDensity"] = new(x => new DrivingResistance(1500, 0.014, 0.8, x), "0 or more", false),
        ["chord of a bolt circle"] = new(x => BoltCircle.FromChord(x, 5, Chord.Adjacent), "50 to 400 mm"),
        ["correction of a speedometer"] = new(x => SpeedometerDrive.Gears(8, 21, correction: x), "0.01 to 100"),
        ["pulses of a sender"] = new(x => SpeedometerDrive.Pulses(x), "up to 1000 pulses"),
        ["step of an error curve"] = new(x => ErrorCurve.Of(Reading.Of(1, 1), x), "at most 100 km/h"),
        ["Gear.Ratio"] = new(x => new Gear("1", Told(x)), "A gear ratio is more than 0"),
        ["Transmission.Reverse"] = new(x => new Transmission("box", []) { Reverse = Told(x) }, "A reverse ratio is more than 0"),
        ["Axle.LowStep"] = new(x => new Axle("axle", null) { LowStep = Told(x) }, "more than 0"),
        ["TyreSet.FreeCircumference"] = new(x => new TyreSet("tyres", null, null) { FreeCircumference = Told(x) }, "A free circumference is more than 0"),
        ["TyreSet.LoadedRadius"] = new(x => new TyreSet("tyres", null, null) { LoadedRadius = Told(x) }, "A loaded radius is more than 0"),
        ["AxleMasses.Front"] = new(x => new AxleMasses(Told(x)), "An axle's mass is more than 0"),
        ["Wheel.RimWidth"] = new(x => new Wheel(Told(x)), "A rim width is more than 0"),
        ["AxleMasses.Rear"] = new(x => new AxleMasses(null, Told(x)), "An axle's mass is more than 0"),
        ["Axle.Ratio"] = new(x => new Axle("axle", Told(x)), "An axle ratio is more than 0"),
        ["Axle.Quoted"] = new(x => new Axle("axle", null) { Quoted = Told(x) }, "An axle ratio is more than 0"),
        ["Axle.HubReduction"] = new(x => new Axle("axle", null) { HubReduction = Told(x) }, "A hub reduction is more than 0"),
        ["Axle.HubFaces"] = new(x => new Axle("axle", null) { HubFaces = Told(x) }, "A track is more than 0"),
        ["Axle.Perches"] = new(x => new Axle("axle", null) { Perches = Told(x) }, "A distance of spring perches is more than 0"),
        ["Axle.TorqueRating"] = new(x => new Axle("axle", null) { TorqueRating = Told(x) }, "A torque rating is more than 0"),
        ["AxleCard.Hub"] = new(x => new AxleCard(null!, [], x), "A hub reduction is more than 0"),
        ["BoltPattern.PitchCircle"] = new(x => new BoltPattern(5, x, "5×114.3"), "A bolt circle, m, is more than 0"),
        ["Bolting.Bore"] = new(x => new Bolting(Bore: Told(x)), "A centre bore is more than 0"),
        ["Bolting.PitchCircle"] = new(x => new Bolting(PitchCircle: Told(x)), "A bolt circle is more than 0"),
        ["Converter.Slip"] = new(x => new Converter(false) { Slip = Told(x) }, "0 to 50 %", false),
        ["Converter.StallSpeed"] = new(x => new Converter(false, Told(x)), "A stall speed is more than 0"),
        ["Converter.StallTorqueRatio"] = new(x => new Converter(false, null, Told(x)), "A stall torque ratio is more than 0"),
        ["Dimensions.Diameter"] = new(x => new Dimensions(x, DimensionsFrom.Formula, "a rule", 0.01), "A tyre's diameter, m, is more than 0"),
        ["Dimensions.Spread"] = new(x => new Dimensions(0.668, DimensionsFrom.Formula, "a rule", x), "A tyre's spread is 0 or more", false),
        ["DrivenDistance.Share"] = new(x => new DrivenDistance(Told(x), new()), "A distance shown over one driven is more than 0"),
        ["Engine.Idle"] = new(x => new Engine("engine", Told(x)), "An idle speed is more than 0"),
        ["Engine.Redline"] = new(x => new Engine("engine", null, Told(x)), "A redline is more than 0"),
        ["Engine.LowestPull"] = new(x => new Engine("engine") { LowestPull = Told(x) }, "A lowest clean pull is more than 0"),
        ["EngineRear.PilotBore"] = new(x => new EngineRear { PilotBore = Told(x) }, "A pilot bore is more than 0"),
        ["Gear.Quoted"] = new(x => new Gear("1", new(3.5, Source.Measured)) { Quoted = Told(x) }, "A gear ratio is more than 0"),
        ["GearboxFront.ClutchRating"] = new(x => new GearboxFront { ClutchRating = Told(x) }, "A clutch rating is more than 0"),
        ["GearboxFront.Spigot"] = new(x => new GearboxFront { Spigot = Told(x) }, "A spigot is more than 0"),
        ["Hanging.Springs"] = new(x => new Hanging(Told(x)), "A distance of springs is more than 0"),
        ["Overdrive.Ratio"] = new(x => new Overdrive("unit", Told(x)), "An overdrive ratio is more than 0"),
        ["Overdrive.Quoted"] = new(x => new Overdrive("unit", null) { Quoted = Told(x) }, "An overdrive ratio is more than 0"),
        ["Propshaft.JointRating"] = new(x => new Propshaft("shaft", new ShaftPiece()) { JointRating = Told(x) }, "A joint rating is more than 0"),
        ["RoadTestPrecision.EngineSpeed"] = new(x => RoadTest.AxleRatio(22, 40, 1, 2, new(0.1, x)), "0 or more", false),
        ["RoadTestPrecision.RoadSpeed"] = new(x => RoadTest.AxleRatio(22, 40, 1, 2, new(x)), "0 or more", false),
        ["RunReading.Real"] = new(x => new RunReading(x, 10_400, "a run"), "A true distance, m, is more than 0"),
        ["RunReading.Shown"] = new(x => new RunReading(10_000, x, "a run"), "A distance shown, m, is more than 0"),
        ["ShaftPiece.outer"] = new(x => new ShaftPiece(Told(x)), "A tube diameter is more than 0"),
        ["ShaftPiece.wall"] = new(x => new ShaftPiece(null, Told(x)), "A tube wall is more than 0"),
        ["ShaftPiece.length"] = new(x => new ShaftPiece(null, null, Told(x)), "A length between joints is more than 0"),
        ["SlipJoint.Stroke"] = new(x => new SlipJoint(Told(x)), "A slip joint's stroke is 0 or more", false),
        ["SlipJoint.Out"] = new(x => new SlipJoint(null, Told(x)), "What a slip joint stands out is 0 or more", false),
        ["SpeedRelation.Axle"] = new(x => (Relation with { Axle = x }).Solved(), "more than zero"),
        ["SpeedRelation.Circumference"] = new(x => (Relation with { Circumference = x }).Solved(), "more than zero"),
        ["SpeedRelation.Gear"] = new(x => (Relation with { Gear = x }).Solved(), "more than zero"),
        ["SpeedRelation.Hub"] = new(x => (Relation with { Hub = x }).Solved(), "more than zero"),
        ["SpeedRelation.Overdrive"] = new(x => (Relation with { Overdrive = x }).Solved(), "more than zero"),
        ["SpeedRelation.Slip"] = new(x => (Relation with { Slip = x }).Solved(), "A converter slips", false),
        ["SpeedRelation.Transfer"] = new(x => (Relation with { Transfer = x }).Solved(), "more than zero"),
        ["Speedometer.Wanted"] = new(x => new Speedometer("dial", Told(x)), "What a speedometer wants, turns or pulses a metre, is more than 0"),
        ["ToldGear.Ratio"] = new(x => new ToldGear("1", "3.32", x), "A gear ratio is more than 0"),
        ["ToldPeak.Most"] = new(x => new ToldPeak(x, 40), "A peak of torque or power is more than 0"),
        ["ToldPeak.At"] = new(x => new ToldPeak(210, x), "The engine speed of a peak, rev/s, is more than 0"),
        ["TransferCase.High"] = new(x => new TransferCase("case", Told(x), null), "A transfer case ratio is more than 0"),
        ["TransferCase.Low"] = new(x => new TransferCase("case", null, Told(x)), "A transfer case ratio is more than 0"),
        ["TransferCase.TorqueRating"] = new(x => new TransferCase("case", null, null) { TorqueRating = Told(x) }, "A torque rating is more than 0"),
        ["Transmission.TorqueRating"] = new(x => new Transmission("box", []) { TorqueRating = Told(x) }, "A torque rating is more than 0"),
        ["TyreSet.RollingCircumference"] = new(x => new TyreSet("tyres", Told(x), null), "A rolling circumference is more than 0"),
        ["TyreSize.AspectRatio"] = new(x => TyreSizeText.Read("205/70R15").OrRefuse() with { AspectRatio = x }, "An aspect ratio is more than 0"),
        ["VehicleLoad.DragArea"] = new(x => new VehicleLoad { DragArea = Told(x) }, "A drag area is more than 0"),
        ["VehicleLoad.DrivenShare"] = new(x => new VehicleLoad { DrivenShare = Told(x) }, "A share on driven wheels is more than 0 and at most 1"),
        ["VehicleLoad.GravityHeight"] = new(x => new VehicleLoad { GravityHeight = Told(x) }, "A height of the centre of gravity is more than 0"),
        ["VehicleLoad.Grip"] = new(x => new VehicleLoad { Grip = Told(x) }, "A grip is more than 0"),
        ["VehicleLoad.Mass"] = new(x => new VehicleLoad { Mass = Told(x) }, "A mass is more than 0"),
        ["VehicleLoad.RollingResistance"] = new(x => new VehicleLoad { RollingResistance = Told(x) }, "A rolling resistance is more than 0"),
        ["VehicleLoad.Wheelbase"] = new(x => new VehicleLoad { Wheelbase = Told(x) }, "A wheelbase is more than 0"),
        ["WheelTravel.Droop"] = new(x => new WheelTravel(Told(x)), "A droop is 0 or more", false),
        ["WheelTravel.Bump"] = new(x => new WheelTravel(null, Told(x)), "A bump travel is 0 or more", false),
    };

    // A number below zero can be; what is far off is refused all the same.
    private static readonly Dictionary<string, (Func<double, object> Of, double Lowest, double Highest, string Says)> Between = new()
    {
        ["Engine.CriticalAltitude"] = (x => new Engine("engine") { CriticalAltitude = Told(x) }, -2000, 11_000, "between −2000 and 11 000 m"),
        ["VehicleLoad.Altitude"] = (x => new VehicleLoad { Altitude = x }, -2000, 11_000, "between −2000 and 11 000 m"),
        ["TestAir.InletCelsius"] = (x => new TestAir(99e3, x), -50, 80, "−50 to 80 °C"),
        ["TurnReading.right"] = (x => new TurnReading(10, x, 20, Wheels.Each, "a count"), -9, 10_000, "turns"),
    };

    // Where any number can be, or none comes from outside; each with its reason.
    private static readonly Dictionary<string, string[]> Free = new()
    {
        ["an angle or an offset, to either side of zero"] = ["Axle.PinionToPerch", "Hanging.Pad", "Inclination.Plan", "Inclination.Side", "JointAngle.Plan", "JointAngle.Side", "Wheel.Offset"],
        ["a value with no part of its own: what is made of it refuses it"] = ["Known.Value", "Typed.Value", "Typed.StandardUncertainty", "Interval.High", "Interval.Low", "Window.High", "Window.Low"],
        ["no such input can be, and the program that makes one is told so (ArgumentOutOfRangeException)"] = ["Input.degreesOfFreedom", "Input.standardUncertainty"],
        ["a speed of a vehicle or an engine that stands or rolls back"] = ["SpeedRelation.EngineSpeed", "SpeedRelation.RoadSpeed"],
        ["a speedometer that is stuck shows nothing"] = ["Reading.Share", "ErrorPoint.Real", "ErrorPoint.Shown"],
        ["a row of a table of ours"] =
        [
            "BodyClass.AreaHigh", "BodyClass.AreaLow", "BodyClass.CoefficientHigh", "BodyClass.CoefficientLow", "RatioRange.High", "RatioRange.Low", "RollingClass.High", "RollingClass.Low", "Unit.factor",
        ],
        ["of parts that were refused before: what a driveline drives in, made by the thousand in a search"] = ["DriveStep.Gear", "DriveStep.Overdrive", "DriveStep.Transfer"],
        ["two numbers of parts that were refused before"] = ["MeasuredAgain.Other", "MeasuredAgain.RoomForAll", "MeasuredAgain.Used", "TagAgainstCount.Counted", "TagAgainstCount.Tag"],
        ["a result"] =
        [
            "BudgetLine.Contribution", "BudgetLine.Sensitivity", "BudgetLine.Share", "Demand.Edge", "EffortPoint.Force", "EffortPoint.Speed", "FastestTurn.Speed", "Finding.Value", "HillStart.Gradient",
            "Option.CruiseEngineSpeed", "OptionScore.Changes", "OptionScore.Clash", "OptionScore.Cost", "OptionScore.Distance", "OptionScore.Open", "OptionScore.Watch", "RatioCandidate.Probability",
            "RatioCandidate.Ratio", "RatioQuestion.Otherwise", "ResistanceLine.Gradient", "RimWidth.High", "RimWidth.Low", "RimWidth.Measuring", "RoadLoadCurve.F0", "RoadLoadCurve.F1", "RoadLoadCurve.F2",
            "SawTooth.EndEngine", "SawTooth.EndSpeed", "SawTooth.StartEngine", "SawTooth.StartSpeed", "SlipTravel.In", "SlipTravel.Out", "TopSpeed.Most", "TopSpeed.Speed", "TractiveEffort.SlipCap",
            "TrainGear.Ratio", "Upshift.EngineSpeed", "Validation.Tolerance",
        ],
    };

    public static TheoryData<string> Numbers => [.. All.Keys];

    public static TheoryData<string> Ranges => [.. Between.Keys];

    [Fact]
    public void Every_number_that_can_be_put_in_is_refused_where_it_cannot_be_or_has_its_reason()
        => Assert.Equal(
            PublicNumbers.All,
            All.Keys.Intersect(PublicNumbers.All).Concat(Between.Keys).Concat(Free.Values.SelectMany(names => names)).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Ranges))]
    public void What_may_lie_below_zero_has_a_range_of_its_own(string name)
    {
        var (made, lowest, highest, says) = Between[name];
        _ = made(lowest);
        _ = made(highest);

        Says(says, () => made(lowest - 1));
        Says(says, () => made(highest + 1));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.035)]
    public void A_slip_joint_may_stand_fully_in_and_an_axle_lie_on_its_stop(double length)
    {
        var known = new Known(length, Source.Measured);

        Assert.Equal(length, new SlipJoint(known, known).Out!.Value.Value);
        Assert.Equal(length, new WheelTravel(known, known).Bump!.Value.Value);
    }

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

    private static Known Told(double number) => new(number, Source.OwnersWord);

    private static void Says(string part, Func<object> make) => Assert.Contains(part, Assert.Throws<RefusedException>(make).Message, StringComparison.Ordinal);
}
