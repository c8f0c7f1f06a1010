using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.RunningGear;

/// <remarks>By hand: μ h/L = 0.8 · 0.55/2.6 = 0.169231; 820 kg stand in front and 620 kg behind.</remarks>
public sealed class LoadAtSlipTests
{
    // 620/(1 − 0.169231) = 746.3 kg; backing away the rear leads: 620/(1 + 0.169231) = 530.3 kg.
    [Fact]
    public void A_driven_rear_axle_gains_what_its_own_pull_moves_there()
    {
        Assert.Equal(746.30, LoadAtSlip.Of(Car, Position.RearAxle)!.Value, 0.01);
        Assert.Equal(530.26, LoadAtSlip.Of(Car, Position.RearAxle, Way.Backwards)!.Value, 0.01);
    }

    // 820/1.169231 = 701.3 kg, and in reverse 820/0.830769 = 987.0 kg.
    [Fact]
    public void A_driven_front_axle_loses_it_and_gains_it_in_reverse()
    {
        var car = Car with { FrontAxle = InventedCar.Axle(4.10), DrivesInFront = true };

        Assert.Equal(701.32, LoadAtSlip.Of(car, Position.FrontAxle)!.Value, 0.01);
        Assert.Equal(987.04, LoadAtSlip.Of(car, Position.FrontAxle, Way.Backwards)!.Value, 0.01);
    }

    // 0.169231 · 1440 kg = 243.7 kg go from the front to the rear.
    [Fact]
    public void With_all_wheels_driven_the_whole_pull_moves_load_and_both_axles_keep_the_mass()
    {
        var car = Car with { FrontAxle = InventedCar.Axle(4.10), TransferCase = new("case", InventedCar.Exactly(1), null) };

        Assert.Equal(863.69, LoadAtSlip.Of(car, Position.RearAxle)!.Value, 0.01);
        Assert.Equal(1440, LoadAtSlip.Of(car, Position.RearAxle)!.Value + LoadAtSlip.Of(car, Position.FrontAxle)!.Value, 1e-9);
    }

    [Fact]
    public void Where_the_height_is_not_known_what_stands_there_at_rest_counts()
        => Assert.Equal(620, LoadAtSlip.Of(Car with { Load = InventedLoad.Exact }, Position.RearAxle)!.Value);

    private static Driveline Car => InventedLoad.Car with
    {
        AxleMasses = new(InventedCar.Exactly(820), InventedCar.Exactly(620)),
        Load = InventedLoad.Exact with { GravityHeight = InventedCar.Exactly(0.55), Wheelbase = InventedCar.Exactly(2.6) },
    };
}
