using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;
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
