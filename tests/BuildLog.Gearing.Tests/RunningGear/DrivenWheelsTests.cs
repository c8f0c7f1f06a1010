using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.RunningGear;

/// <remarks>Axles of 900 and 1100 kg: 55 % stand on the rear one.</remarks>
public sealed class DrivenWheelsTests
{
    private static readonly AxleMasses Weighed = new(InventedCar.Exactly(900), InventedCar.Exactly(1100));

    [Fact]
    public void A_part_time_front_axle_drives_in_the_low_range_and_not_on_the_road()
    {
        var truck = Truck(FrontDrive.Declutch) with { AxleMasses = Weighed };

        Assert.Equal(0.55, DrivenWheels.ShareOnTheRoad(truck)!.Value, 1e-12);
        Assert.Equal(0.45, DrivenWheels.ShareOnTheRoad(truck with { DrivesInFront = true })!.Value, 1e-12);
        Assert.Equal(1, DrivenWheels.ShareInLowRange(truck)!.Value);
    }

    [Theory]
    [InlineData(0.6, 0.6)]
    [InlineData(1.0, null)]
    public void A_share_that_was_told_is_the_roads_unless_it_speaks_of_all_wheels(double told, double? onTheRoad)
    {
        var truck = Truck(FrontDrive.Declutch, told);

        Assert.Equal(onTheRoad, DrivenWheels.ShareOnTheRoad(truck)?.Value);
        Assert.Equal(1, DrivenWheels.ShareInLowRange(truck)!.Value);
    }

    [Theory]
    [InlineData(FrontDrive.ThroughShaft)]
    [InlineData(FrontDrive.CentreDifferential)]
    [InlineData(FrontDrive.ClutchPack)]
    public void Wheels_that_are_always_driven_carry_all_of_it(FrontDrive drive)
    {
        Assert.Equal(1, DrivenWheels.ShareOnTheRoad(Truck(drive))!.Value);
        Assert.Equal(1, DrivenWheels.ShareInLowRange(Truck(drive))!.Value);
    }

    // 99 % and more is all of it, as somebody writes it who means all wheels.
    [Theory]
    [InlineData(0.989, 0.989)]
    [InlineData(0.99, null)]
    public void Nearly_all_is_all(double told, double? onTheRoad)
        => Assert.Equal(onTheRoad, DrivenWheels.ShareOnTheRoad(Truck(FrontDrive.Declutch, told))?.Value);

    [Theory]
    [InlineData(0.3)]
    [InlineData(1.0)]
    public void Axles_that_were_weighed_beat_what_was_told(double told)
    {
        var (truck, car) = (Truck(FrontDrive.Declutch, told) with { AxleMasses = Weighed }, InventedCar.Plain with { AxleMasses = Weighed, Load = new() { DrivenShare = new(told, Source.OwnersWord) } });

        Assert.Equal(0.55, DrivenWheels.ShareOnTheRoad(truck)!.Value, 1e-12);
        Assert.Equal(0.55, DrivenWheels.ShareOnTheRoad(car)!.Value, 1e-12);
        Assert.Equal(0.55, DrivenWheels.ShareInLowRange(car)!.Value, 1e-12);
    }

    // A transfer case before one axle alone drives that one.
    [Fact]
    public void A_case_without_a_second_axle_joins_nothing()
    {
        var truck = Truck(FrontDrive.Declutch) with { AxleMasses = Weighed };

        Assert.Equal(0.55, DrivenWheels.ShareInLowRange(truck with { FrontAxle = null })!.Value, 1e-12);
        Assert.Equal(0.45, DrivenWheels.ShareInLowRange(truck with { RearAxle = null })!.Value, 1e-12);
        Assert.Equal(0.55, DrivenWheels.ShareInLowRange(truck with { TransferCase = null })!.Value, 1e-12);
    }

    [Fact]
    public void What_nobody_weighed_or_told_is_not_known()
    {
        Assert.Null(DrivenWheels.ShareOnTheRoad(Truck(FrontDrive.Declutch)));
        Assert.Null(DrivenWheels.ShareOnTheRoad(Truck(FrontDrive.Declutch) with { AxleMasses = new(InventedCar.Exactly(900)) }));
        Assert.Null(DrivenWheels.ShareInLowRange(InventedCar.Plain));
    }

    [Fact]
    public void One_driven_axle_has_what_was_told()
        => Assert.Equal(0.52, DrivenWheels.ShareOnTheRoad(InventedCar.Plain with { Load = new() { DrivenShare = new(0.52, Source.Measured) } })!.Value);

    [Fact]
    public void One_driven_axle_that_was_weighed_has_its_part()
    {
        var car = InventedCar.Plain with { AxleMasses = Weighed };

        Assert.Equal(0.55, DrivenWheels.ShareOnTheRoad(car)!.Value, 1e-12);
        Assert.Equal(0.55, DrivenWheels.ShareInLowRange(car)!.Value, 1e-12);
    }

    private static Driveline Truck(FrontDrive drive, double? told = null) => InventedCar.Plain with
    {
        FrontAxle = InventedCar.Axle(4.10),
        TransferCase = new("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)) { FrontDrive = drive },
        Load = new() { DrivenShare = told is { } share ? new(share, Source.OwnersWord) : null },
    };
}
