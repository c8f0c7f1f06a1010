using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
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
    }

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
