using BuildLog.Data.Fitments;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Fitments;

public sealed class AnOdometer : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Does_not_run_backwards()
    {
        var vehicle = test.Vehicle("Brindle");
        test.Shop.Fit(test.Axle("axle"), vehicle, Position.RearAxle, new(2026, 5, 3), "84 210");
        Refused(
            "The odometer of Brindle runs backwards: 84 000 km on 1 June 2026 is less than 84 210 km on 3 May 2026 (axle fitted).",
            () => test.Shop.Fit(test.Gearbox("1.00"), vehicle, Position.Transmission, new(2026, 6, 1), "84 000"));
        Refused(
            "The odometer of Brindle runs backwards: 90 000 km on 1 April 2026 is more than 84 210 km later, on 3 May 2026 (axle fitted).",
            () => test.Shop.Fit(test.Gearbox("1.00"), vehicle, Position.Transmission, new(2026, 4, 1), "90 000"));
        Assert.Single(test.Shop.Fitments(vehicle));
    }

    [Fact]
    public void Does_not_run_backwards_when_a_part_comes_off()
    {
        var (vehicle, axle) = (test.Vehicle("Brindle"), test.Axle("axle"));
        test.Shop.Fit(axle, vehicle, Position.RearAxle, new(2026, 5, 3), "84 210");
        Refused(
            "The odometer of Brindle runs backwards: 84 209 km on 1 June 2026 is less than 84 210 km on 3 May 2026 (axle fitted).",
            () => test.Shop.TakeOff(axle, new(2026, 6, 1), "84 209"));
        test.Shop.TakeOff(axle, new(2026, 6, 1), "84 210");
    }

    [Fact]
    public void May_be_left_unread_and_may_stand_still()
    {
        var vehicle = test.Vehicle("Brindle");
        test.Shop.Fit(test.Axle("axle"), vehicle, Position.RearAxle, new(2026, 5, 3), "84 210");
        test.Shop.Fit(test.Gearbox("1.00"), vehicle, Position.Transmission, new(2026, 5, 4), "84 210");
        test.Shop.Fit(test.Wheels("2.04 m"), vehicle, Position.Tyres, new(2026, 5, 5));
        Assert.Equal(3, test.Shop.Fitments(vehicle).Count);
    }

    // 1 mi = 1609.344 m by definition.
    [Fact]
    public void Is_in_the_vehicles_unit_when_typed_bare()
    {
        var vehicle = test.Vehicle("Ottery", OdometerUnit.Miles);
        var fitment = test.Shop.Fit(test.Axle("axle"), vehicle, Position.RearAxle, new(2026, 5, 3), "1 000");
        Assert.Equal(1_609_344, fitment.FromOdometer!.Metres, 1e-6);
        Assert.Equal("1 000 mi", fitment.FromOdometer.InWords);
    }

    // Four digits before the point, a zero, or another mark behind it: thousands are not meant, or are for certain.
    [Theory]
    [InlineData("84.21", 84_210)]
    [InlineData("1234.567", 1_234_567)]
    [InlineData("0.120", 120)]
    [InlineData("84.210,5", 84_210_500)]
    [InlineData("1.084.210", 1_084_210_000)]
    public void May_have_a_point_that_is_read_in_one_way(string typed, double metres)
        => Assert.Equal(metres, OdometerReading.ReadDistance(typed, OdometerUnit.Kilometres).OrRefuse().Value, 1e-6);

    [Theory]
    [InlineData("84,210", "'84,210' could be 84210 or 84.210: write it without the comma.")]
    [InlineData("84.210", "'84.210' could be 84 210 or 84.21: write it without the point.")]
    [InlineData(" 84.000 km", "'84.000 km' could be 84 000 or 84: write it without the point.")]
    [InlineData("-5 km", "'-5 km' is no odometer reading.")]
    [InlineData("5 kg", "'5 kg' is no distance: write kilometres or miles.")]
    [InlineData("soon", "'soon' is no distance: write kilometres or miles.")]
    [InlineData("84 210 furlongs", "'84 210 furlongs' is no distance: write kilometres or miles.")]
    public void Is_refused_where_it_cannot_be_understood(string typed, string sentence)
        => Refused(sentence, () => test.Shop.Fit(test.Axle("axle"), test.Vehicle("Brindle"), Position.RearAxle, new(2026, 5, 3), typed));

    private static void Refused(string sentence, Action act) => Assert.Equal(sentence, Assert.Throws<RefusedException>(act).Message);
}
