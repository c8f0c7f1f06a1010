using BuildLog.Gearing.Drivelines;
using Xunit;

namespace BuildLog.Data.Tests.Fitments;

public sealed class DaysOfAFitment : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Theory]
    [InlineData("2026-05-02", null)]
    [InlineData("2026-05-03", "first")]
    [InlineData("2026-05-31", "first")]
    [InlineData("2026-06-01", "second")]
    [InlineData("2026-06-30", "second")]
    [InlineData("2026-07-01", null)]
    public void Hold_from_the_first_up_to_but_not_including_the_last(string day, string? fitted)
    {
        var (vehicle, first, second) = (test.Vehicle("Brindle"), test.Axle("first"), test.Axle("second"));
        test.Shop.Fit(first, vehicle, Position.RearAxle, new(2026, 5, 3));
        test.Shop.Fit(second, vehicle, Position.RearAxle, new(2026, 6, 1));
        test.Shop.TakeOff(second, new(2026, 7, 1));
        var then = test.Shop.DrivelineOn(vehicle, DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(fitted, then.At(Position.RearAxle)?.Name);
        Assert.Equal(fitted, then.Driveline.RearAxle?.Name);
    }

    [Fact]
    public void A_swap_takes_the_old_part_off_the_same_day_for_the_same_reason()
    {
        var (vehicle, first, second) = (test.Vehicle("Brindle"), test.Axle("first"), test.Axle("second"));
        test.Shop.Fit(first, vehicle, Position.RearAxle, new(2026, 5, 3), "100 km");
        test.Shop.Fit(second, vehicle, Position.RearAxle, new(2026, 6, 1), "200 km", "first one whined");
        var old = test.Shop.Fitments(vehicle)[0];
        Assert.Equal((new DateOnly(2026, 6, 1), "200 km", "first one whined"), (old.To!.Value, old.ToOdometer!.Text, old.ReasonOff));
        Assert.Null(test.Shop.Parts().Single(part => part.Component.Name == "first").Fitment);
    }

    [Fact]
    public void Several_swaps_of_one_day_follow_each_other_and_the_day_means_its_end()
    {
        var (vehicle, day) = (test.Vehicle("Brindle"), new DateOnly(2026, 5, 3));
        var axles = ((string[])["a", "b", "c"]).Select(name => test.Axle(name)).ToList();
        foreach (var axle in axles) test.Shop.Fit(axle, vehicle, Position.RearAxle, day, reason: $"try {axle.Name}");
        Assert.Equal("c", test.Shop.DrivelineOn(vehicle, day).At(Position.RearAxle)!.Name);
        Assert.Equal([(null, "a"), ("a", "b"), ("b", "c")], test.Shop.History(vehicle).Select(swap => (swap.Removed?.Name, swap.Fitted?.Name)));
        Assert.Equal(["a", "b", "c"], test.Shop.History(vehicle).Select(swap => swap.After.RearAxle?.Name));
    }

    [Fact]
    public void A_part_may_leave_one_vehicle_and_join_another_on_one_day()
    {
        var (one, other, axle, day) = (test.Vehicle("Brindle"), test.Vehicle("Tansy"), test.Axle("a"), new DateOnly(2026, 5, 3));
        test.Shop.Fit(axle, one, Position.RearAxle, day);
        test.Shop.TakeOff(axle, day, reason: "lent");
        test.Shop.Fit(axle, other, Position.RearAxle, day);
        test.Shop.TakeOff(axle, day);
        test.Shop.Fit(axle, one, Position.RearAxle, day);
        Assert.Equal("a", test.Shop.DrivelineOn(one, day).At(Position.RearAxle)!.Name);
        Assert.Empty(test.Shop.DrivelineOn(other, day).Fitted);
        Assert.Equal([("a", null), (null, "a"), (null, "a")], test.Shop.History(one).Select(swap => (swap.Removed?.Name, swap.Fitted?.Name)).OrderBy(pair => pair.Item1 is null));
        Assert.Equal("lent", test.Shop.History(one)[1].Reason);
    }
}
