using BuildLog.Data.Components;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Fitments;

public sealed class FittingAPart : IDisposable
{
    private static readonly DateOnly May3 = new(2026, 5, 3);
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Is_remembered_with_day_odometer_and_reason()
    {
        var (vehicle, axle) = (test.Vehicle("Brindle"), test.Axle("Harrow 4.10 axle"));
        test.Shop.Fit(axle, vehicle, Position.RearAxle, May3, "84 210", "the old one whined");
        test.Reopen();
        var fitment = Assert.Single(test.Shop.Fitments(vehicle));
        Assert.Equal(("Harrow 4.10 axle", "Brindle"), (fitment.Component.Name, fitment.Vehicle.Name));
        Assert.Equal((Position.RearAxle, May3, null, "the old one whined"), (fitment.Position, fitment.From, fitment.To, fitment.Reason));
        Assert.Equal(("84 210 km", 84_210_000.0), (fitment.FromOdometer!.InWords, fitment.FromOdometer.Metres));
        Assert.Equal("Brindle", Assert.Single(test.Shop.Parts()).Fitment!.Vehicle.Name);
    }

    [Fact]
    public void Stores_a_new_part_with_its_fitting_or_neither()
    {
        var vehicle = test.Vehicle("Brindle");
        test.Shop.Fit(test.Axle("first axle"), vehicle, Position.RearAxle, May3, "84 210");
        var box = new TransmissionComponent { Name = "new box", Gears = TransmissionComponent.GearsFrom(Source.Tag, "3.54", "1.00") };
        Assert.Throws<RefusedException>(() => test.Shop.Fit(box, vehicle, Position.Transmission, May3, "84 000"));
        Assert.Single(test.Shop.Parts());
        Assert.Equal(0, box.Id);

        test.Shop.Fit(box, vehicle, Position.Transmission, May3, "84 210");
        Assert.Equal(["new box", "first axle"], test.Shop.DrivelineOn(vehicle, May3).Fitted.Select(fitment => fitment.Component.Name));
    }

    [Fact]
    public void Is_refused_while_it_is_on_another_vehicle()
    {
        var axle = test.Axle("Harrow 4.10 axle");
        test.Shop.Fit(axle, test.Vehicle("Brindle"), Position.RearAxle, May3);
        var tansy = test.Vehicle("Tansy");
        Refused("The Harrow 4.10 axle is fitted to Brindle as axle since 3 May 2026; take it off there first.", () => test.Shop.Fit(axle, tansy, Position.RearAxle, new(2026, 6, 1)));
        Refused(
            "The Harrow 4.10 axle is fitted to Brindle as axle from 3 May 2026, so it cannot be fitted to Tansy from 1 April 2026 on; begin after it came off there.",
            () => test.Shop.Fit(axle, tansy, Position.RearAxle, new(2026, 4, 1)));
        Assert.Empty(test.Shop.Fitments(tansy));
    }

    [Fact]
    public void Is_refused_where_it_sits_already()
    {
        var (vehicle, axle) = (test.Vehicle("Brindle"), test.Axle("Harrow 4.10 axle"));
        test.Shop.Fit(axle, vehicle, Position.RearAxle, May3);
        Refused("The Harrow 4.10 axle is fitted to Brindle as axle already, since 3 May 2026.", () => test.Shop.Fit(axle, vehicle, Position.RearAxle, May3));
        Refused("The Harrow 4.10 axle is fitted to Brindle as axle since 3 May 2026; take it off there first.", () => test.Shop.Fit(axle, vehicle, Position.FrontAxle, May3));
    }

    [Fact]
    public void Is_refused_within_days_it_spent_elsewhere()
    {
        var axle = test.Axle("Harrow 4.10 axle");
        test.Shop.Fit(axle, test.Vehicle("Brindle"), Position.RearAxle, May3);
        test.Shop.TakeOff(axle, new(2026, 6, 1));
        var tansy = test.Vehicle("Tansy");
        Refused(
            "The Harrow 4.10 axle was fitted to Brindle as axle from 3 May 2026 to 1 June 2026; fit it to Tansy on 1 June 2026 or later.",
            () => test.Shop.Fit(axle, tansy, Position.RearAxle, new(2026, 5, 20)));
        test.Shop.Fit(axle, tansy, Position.RearAxle, new(2026, 6, 1));
        Assert.Equal("Tansy", Assert.Single(test.Shop.Parts()).Fitment!.Vehicle.Name);
    }

    [Fact]
    public void Is_refused_where_another_part_came_later()
    {
        var (vehicle, first, second) = (test.Vehicle("Brindle"), test.Axle("first axle"), test.Axle("second axle"));
        test.Shop.Fit(first, vehicle, Position.RearAxle, May3);
        Refused("The first axle is the axle of Brindle from 3 May 2026; fit the second axle on that day or later.", () => test.Shop.Fit(second, vehicle, Position.RearAxle, new(2026, 5, 2)));
        test.Shop.TakeOff(first, new(2026, 6, 1));
        Refused("The first axle was the axle of Brindle from 3 May 2026 to 1 June 2026; fit the second axle on 1 June 2026 or later.", () => test.Shop.Fit(second, vehicle, Position.RearAxle, new(2026, 5, 31)));
        test.Shop.Fit(second, vehicle, Position.RearAxle, new(2026, 6, 1));
    }

    [Fact]
    public void Is_refused_in_a_place_for_other_parts()
        => Refused("The Harrow 4.10 axle is no gearbox: it is fitted as axle.", () => test.Shop.Fit(test.Axle("Harrow 4.10 axle"), test.Vehicle("Brindle"), Position.Transmission, May3));

    [Fact]
    public void Is_refused_on_a_day_that_cannot_be_meant()
        => Refused("0026-05-03 is no day of this shop: the year lies between 1900 and 2200.", () => test.Shop.Fit(test.Axle("a"), test.Vehicle("Brindle"), Position.RearAxle, new(26, 5, 3)));

    [Fact]
    public void Cannot_come_off_before_it_went_on()
    {
        var axle = test.Axle("Harrow 4.10 axle");
        test.Shop.Fit(axle, test.Vehicle("Brindle"), Position.RearAxle, May3);
        Refused("The Harrow 4.10 axle was fitted to Brindle on 3 May 2026, so it cannot come off on 2 May 2026, before that.", () => test.Shop.TakeOff(axle, new(2026, 5, 2)));
    }

    [Fact]
    public void Cannot_come_off_when_it_is_nowhere()
        => Refused("The Harrow 4.10 axle is not fitted to anything, so it cannot come off.", () => test.Shop.TakeOff(test.Axle("Harrow 4.10 axle"), May3));

    private static void Refused(string sentence, Action act) => Assert.Equal(sentence, Assert.Throws<RefusedException>(act).Message);
}
