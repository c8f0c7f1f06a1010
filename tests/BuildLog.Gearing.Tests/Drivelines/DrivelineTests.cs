using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Speeds;
using Xunit;

namespace BuildLog.Gearing.Tests.Drivelines;

public sealed class DrivelineTests
{
    private static readonly Overdrive Overdrive = new("overdrive unit", InventedCar.Exactly(0.8));

    [Fact]
    public void The_top_step_is_the_last_gear()
    {
        Assert.Equal(["1", "2", "3", "4"], InventedCar.Plain.Steps.Select(step => step.Name));
        Assert.Equal("4", InventedCar.Plain.Step(null)!.Name);
    }

    [Fact]
    public void An_overdrive_unit_adds_a_step_above_the_top_gear()
    {
        var step = (InventedCar.Plain with { Overdrive = Overdrive }).Step(null)!;

        Assert.Equal("4+OD", step.Name);
        Assert.Equal(0.8, step.Ratio.Value, 1e-12);
        Assert.Equal(("4 with overdrive", 0.8), (step.InWords, step.Overdrive.Value));
        Assert.Equal(("3", 1.0), (InventedCar.Plain.Step("3")!.InWords, InventedCar.Plain.Step("3")!.Overdrive.Value));
    }

    // The unit sits behind a case in high too: 1 · 0.8 · 1.25.
    [Fact]
    public void An_overdrive_and_a_transfer_case_are_both_in_the_top_step()
        => Assert.Equal(1, (InventedCar.Plain with { Overdrive = Overdrive, TransferCase = new("case", InventedCar.Exactly(1.25), null) }).Step(null)!.Ratio.Value, 1e-12);

    [Fact]
    public void Front_tyres_that_differ_are_the_front_axles_and_else_all_are_alike()
    {
        var (rear, front) = (InventedCar.Rolling(2.0), InventedCar.Rolling(2.2));

        Assert.Same(front, (rear with { FrontPair = front }).On(Position.FrontAxle));
        Assert.Equal(2.0, (rear with { FrontPair = front }).On(Position.RearAxle).RollingCircumference!.Value.Value);
        Assert.Same(rear, rear.On(Position.FrontAxle));
        Assert.Null((InventedCar.Plain with { Tyres = null }).DrivingTyres);
    }

    // Two measurements 0.03 apart, each ± 0.02 at 95 %: √2 · 0.02 = 0.028 is less.
    [Theory]
    [InlineData(4.10, 4.13, false)]
    [InlineData(4.10, 4.12, true)]
    public void Two_measurements_of_one_number_agree_within_what_both_leave(double used, double other, bool agree)
    {
        Known Count(double value) => InventedCar.Exactly(InventedCar.Of(value, 0.02 / 1.959964));

        Assert.Equal(agree, new MeasuredAgain(Position.RearAxle, "ratio", Units.One, Count(used), Count(other)).Agrees);
    }

    [Fact]
    public void Every_position_is_called_as_the_trade_calls_it()
        => Assert.Equal(
            ["engine", "gearbox", "overdrive", "transfer case", "propshaft", "front propshaft", "axle", "front axle", "tyres", "front tyres", "speedometer"],
            Enum.GetValues<Position>().Select(position => position.InWords()));

    // The unit is there, so the top step is not the plain fourth; but how long it is nobody knows.
    [Fact]
    public void With_an_overdrive_of_unknown_ratio_the_top_step_is_not_known()
    {
        var unknown = InventedCar.Plain with { Overdrive = new("overdrive unit", null) };

        Assert.Null(unknown.Step(null));
        Assert.Equal("4", unknown.Step("4")!.Name);
    }

    [Fact]
    public void A_gear_is_found_by_its_name_in_large_or_small_letters()
    {
        Assert.Equal("4+OD", (InventedCar.Plain with { Overdrive = Overdrive }).Step("4+od")!.Name);
        Assert.Null(InventedCar.Plain.Step("5"));
    }

    [Fact]
    public void A_transfer_case_in_high_is_in_every_step()
    {
        var step = (InventedCar.Plain with { TransferCase = new("transfer case", InventedCar.Exactly(1.25), null) }).Step("3")!;

        Assert.Equal(1.4 * 1.25, step.Ratio.Value, 1e-12);
    }

    [Fact]
    public void Without_a_gearbox_or_the_high_ratio_of_a_transfer_case_there_are_no_steps()
    {
        Assert.Empty((InventedCar.Plain with { Transmission = null }).Steps);
        Assert.Empty((InventedCar.Plain with { Transmission = new("empty", []) }).Steps);
        Assert.Empty((InventedCar.Plain with { TransferCase = new("transfer case", null, null) }).Steps);
    }

    [Fact]
    public void The_rear_axle_drives_unless_the_vehicle_says_otherwise_or_has_only_the_front()
    {
        var both = InventedCar.Plain with { FrontAxle = InventedCar.Axle(4.11) };

        Assert.Equal(Position.RearAxle, both.DrivingPosition);
        Assert.Equal(4.10, both.DrivingAxle!.Ratio!.Value.Value);
        Assert.Equal(4.11, (both with { DrivesInFront = true }).DrivingAxle!.Ratio!.Value.Value);
        Assert.Equal(Position.FrontAxle, (both with { RearAxle = null }).DrivingPosition);
        Assert.Equal(Position.RearAxle, new Driveline().DrivingPosition);
    }

    [Fact]
    public void The_other_axle_is_the_one_that_does_not_drive()
    {
        var both = InventedCar.Plain with { FrontAxle = InventedCar.Axle(4.11) };

        Assert.Equal((Position.FrontAxle, 4.11), (both.OtherPosition, both.OtherAxle!.Ratio!.Value.Value));
        Assert.Equal((Position.RearAxle, 4.10), ((both with { DrivesInFront = true }).OtherPosition, (both with { DrivesInFront = true }).OtherAxle!.Ratio!.Value.Value));
        Assert.Null(InventedCar.Plain.OtherAxle);
    }

    [Fact]
    public void Where_nothing_is_known_of_the_load_the_grip_is_that_of_a_dry_road()
    {
        Assert.Equal(DryRoad.Grip.Value.Value, InventedCar.Plain.Grip.Value.Value);
        Assert.Equal(0.5, (InventedCar.Plain with { Load = new() { Grip = InventedCar.Exactly(0.5) } }).Grip.Value.Value);
    }

    // Front tyres of their own stay on when those behind come off.
    [Fact]
    public void What_is_taken_out_is_gone_and_nothing_else()
    {
        var shaft = InventedShaft.Plain;
        var whole = InventedCar.Plain with
        {
            Engine = new("four"),
            Overdrive = Overdrive,
            TransferCase = new("case", null, null),
            Propshaft = shaft,
            FrontPropshaft = shaft,
            FrontAxle = InventedCar.Axle(4.11),
            Tyres = InventedCar.Rolling(2.0) with { FrontPair = InventedCar.Rolling(2.2) },
            Speedometer = new("dial", null, null),
        };

        Assert.Equal(Enum.GetValues<Position>(), Fitted(whole));
        Assert.All(Enum.GetValues<Position>(), gone => Assert.Equal(Enum.GetValues<Position>().Where(position => position != gone), Fitted(whole.Without(gone))));
        Assert.Throws<ArgumentOutOfRangeException>(() => whole.Without((Position)99));

        var front = whole.Without(Position.Tyres);
        Assert.Same(whole.Tyres.FrontPair, front.Without(Position.Tyres).LoneFrontTyres);
        Assert.DoesNotContain(Position.FrontTyres, Fitted(front.Without(Position.FrontTyres)));

        static IEnumerable<Position> Fitted(Driveline car)
        {
            object?[] parts =
            [
                car.Engine, car.Transmission, car.Overdrive, car.TransferCase, car.Propshaft, car.FrontPropshaft, car.RearAxle, car.FrontAxle,
                car.Tyres, car.Tyres?.FrontPair ?? car.LoneFrontTyres, car.Speedometer,
            ];
            return Enum.GetValues<Position>().Where((_, k) => parts[k] is not null);
        }
    }

    // 100 km/h on 2.00 m are 13.89 wheel turns a second, on 2.20 m in front 12.63.
    [Fact]
    public void Where_the_front_axle_drives_its_own_tyres_count()
    {
        var car = InventedCar.Plain with { FrontAxle = InventedCar.Axle(4.10), Tyres = InventedCar.Rolling(2.00) with { FrontPair = InventedCar.Rolling(2.20) } };
        var goal = InventedCar.Goal("100 km/h", "3000");

        Assert.Equal(100 / 3.6 * 4.10 / 2.00, CruiseCheck.EngineSpeed(car, goal)!.Value, 1e-9);
        Assert.Equal(100 / 3.6 * 4.10 / 2.20, CruiseCheck.EngineSpeed(car with { DrivesInFront = true }, goal)!.Value, 1e-9);
        Assert.Equal(100 / 3.6, GearSpeeds.Of(car with { DrivesInFront = true })!.RoadSpeed(car.Step(null)!, 100 / 3.6 * 4.10 / 2.20).Value, 1e-9);
    }

    [Fact]
    public void Every_position_has_a_word_of_its_own()
    {
        var words = Enum.GetValues<Position>().Select(position => position.InWords()).ToList();

        Assert.Equal(words.Count, words.Distinct().Count());
        Assert.Throws<ArgumentOutOfRangeException>(() => ((Position)99).InWords());
    }
}
