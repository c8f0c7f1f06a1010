using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Speedometers;

public sealed class DrivenDistanceTests
{
    private static readonly DrivenDistance Driven = new(InventedCar.Exactly(1.02), InventedTruck.Whole);

    [Fact]
    public void It_holds_while_what_turns_the_cable_and_the_wheels_are_the_same()
    {
        Assert.True(Driven.HoldsFor(InventedTruck.Whole));
        Assert.True(Driven.HoldsFor(InventedTruck.Whole with { Engine = null, FrontAxle = null, FrontPropshaft = null, Load = null }));
    }

    [Fact]
    public void A_change_of_any_of_them_ends_it()
    {
        Assert.False(Driven.HoldsFor(InventedTruck.Whole with { Transmission = new("other", []) }));
        Assert.False(Driven.HoldsFor(InventedTruck.Whole with { TransferCase = null }));
        Assert.False(Driven.HoldsFor(InventedTruck.Whole with { RearAxle = InventedCar.Axle(3.7) }));
        Assert.False(Driven.HoldsFor(InventedTruck.Whole with { Tyres = InventedCar.Rolling(2.1) }));
        Assert.False(Driven.HoldsFor(InventedTruck.Whole with { Speedometer = null }));
        Assert.False(Driven.HoldsFor(InventedTruck.Whole with { DrivesInFront = true }));
    }
}
