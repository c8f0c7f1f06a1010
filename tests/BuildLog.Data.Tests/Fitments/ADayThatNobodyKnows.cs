using BuildLog.Data.Days;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Fitments;

public sealed class ADayThatNobodyKnows : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Is_told_as_typed_and_ordered_by_the_earliest_it_can_be()
    {
        var (vehicle, first, second, third) = (test.Vehicle("Brindle"), test.Axle("first"), test.Axle("second"), test.Axle("third"));
        test.Shop.FitSometime(first, vehicle, Position.RearAxle, Day("about 2019"));
        test.Shop.FitSometime(second, vehicle, Position.RearAxle, Day("spring 2024"), reason: "first one whined");
        test.Shop.Fit(third, vehicle, Position.RearAxle, new(2024, 10, 12));
        test.Reopen();
        Assert.Equal(["about 2019", "spring 2024", "12 October 2024"], test.Shop.History(vehicle).Select(swap => swap.Day.InWords));

        var fitments = test.Shop.Fitments(vehicle);
        Assert.Equal((new DateOnly(2024, 3, 1), new DateOnly(2024, 3, 1), new DateOnly(2024, 5, 31)), (fitments[1].From, fitments[1].FromDay.Earliest, fitments[1].FromDay.Latest));
        Assert.Equal("as axle from about 2019 to spring 2024", fitments[0].ToString());
        Assert.Contains(test.Shop.Find("spring 2024"), found => found is { Kind: "fitment", Part: "second" });
    }

    [Fact]
    public void Leaves_what_was_fitted_uncertain_within_its_bounds_and_says_so()
    {
        var (vehicle, first, second) = (test.Vehicle("Brindle"), test.Axle("first"), test.Axle("second"));
        test.Shop.Fit(first, vehicle, Position.RearAxle, new(2023, 1, 1));
        test.Shop.FitSometime(second, vehicle, Position.RearAxle, Day("spring 2024"));
        test.Shop.TakeOffSometime(second, Day("2025"));
        Assert.Empty(Doubts(new(2024, 2, 29)));
        Assert.Equal(["It is not certain of 1 March 2024: the second (axle) was fitted at a day typed as 'spring 2024'; reckoned from 1 March 2024."], Doubts(new(2024, 3, 1)));
        Assert.Single(Doubts(new(2024, 5, 30)));
        Assert.Empty(Doubts(new(2024, 5, 31)));
        Assert.Equal(["It is not certain of 30 June 2025: the second (axle) was taken off at a day typed as '2025'; reckoned from 1 January 2025."], Doubts(new(2025, 6, 30)));
        Assert.Empty(Doubts(new(2025, 12, 31)));

        // By two routes the same: a day alone, and as the end of a difference.
        Assert.Equal(Doubts(new(2024, 4, 1)), test.Shop.Difference(vehicle, new(2023, 6, 1), new(2024, 4, 1)).After.Doubts);

        IReadOnlyList<string> Doubts(DateOnly day) => test.Shop.DrivelineOn(vehicle, day).Doubts;
    }

    // Came off the one in April 2024, on the other by the end of May: in between there is room.
    [Fact]
    public void Collides_only_where_its_bounds_force_it()
    {
        var (brindle, tansy, axle) = (test.Vehicle("Brindle"), test.Vehicle("Tansy"), test.Axle("Harrow axle"));
        test.Shop.Fit(axle, brindle, Position.RearAxle, new(2023, 1, 1));
        test.Shop.TakeOff(axle, new(2024, 4, 10));
        Assert.Equal(new DateOnly(2024, 4, 10), test.Shop.FitSometime(axle, tansy, Position.RearAxle, Day("spring 2024")).From);
        test.Shop.Remove(Assert.Single(test.Shop.Fitments(tansy)));
        Assert.StartsWith("The Harrow axle was fitted to Brindle", Refused(() => test.Shop.FitSometime(axle, tansy, Position.RearAxle, Day("March 2024"))), StringComparison.Ordinal);
    }

    [Fact]
    public void Is_bound_by_what_the_odometer_showed()
    {
        var (vehicle, axle, tyres) = (test.Vehicle("Brindle"), test.Axle("Harrow axle"), test.Wheels("2.04 m"));
        test.Shop.Fit(tyres, vehicle, Position.Tyres, new(2024, 4, 10), "61 690 km");
        Assert.Equal(new DateOnly(2024, 4, 10), test.Shop.FitSometime(axle, vehicle, Position.RearAxle, Day("spring 2024"), "62 000 km").From);
        Assert.Contains("runs backwards", Refused(() => test.Shop.TakeOffSometime(axle, Day("June 2024"), "61 000 km")), StringComparison.Ordinal);
    }

    [Fact]
    public void Comes_off_no_earlier_than_it_was_fitted()
    {
        var (vehicle, axle) = (test.Vehicle("Brindle"), test.Axle("Harrow axle"));
        test.Shop.Fit(axle, vehicle, Position.RearAxle, new(2024, 4, 10));
        var off = test.Shop.TakeOffSometime(axle, Day("2024"));
        Assert.Equal((new DateOnly(2024, 4, 10), "2024"), (off.To, off.ToDay!.InWords));
        Assert.Equal("as axle from 10 April 2024 to 2024", off.ToString());
    }

    [Theory]
    [InlineData("unknown", "'unknown' leaves the day quite open: give a year, even a rough one.")]
    [InlineData("spring 1850", "'spring 1850' lies outside 1900 to 2200.")]
    public void Says_at_least_a_year(string typed, string sentence)
    {
        var (vehicle, axle) = (test.Vehicle("Brindle"), test.Axle("Harrow axle"));
        Assert.Equal(sentence, Refused(() => test.Shop.FitSometime(axle, vehicle, Position.RearAxle, Day(typed))));
        Assert.Empty(test.Shop.Fitments(vehicle));
    }

    [Fact]
    public void Is_learnt_later_and_forgotten_again_on_both_sides_of_a_swap()
    {
        var (vehicle, first, second) = (test.Vehicle("Brindle"), test.Axle("first"), test.Axle("second"));
        test.Shop.Fit(first, vehicle, Position.RearAxle, new(2020, 1, 1));
        var swap = test.Shop.FitSometime(second, vehicle, Position.RearAxle, Day("spring 2024"));
        test.Shop.Correct(swap, facts => facts.From = new(2024, 5, 2));
        Assert.Equal(["2 May 2024", "2 May 2024"], Days(vehicle));

        test.Shop.Correct(test.Shop.Fitments(vehicle)[1], facts => facts.FromDay = Day("spring 2024"));
        Assert.Equal(["spring 2024", "spring 2024"], Days(vehicle));
        Assert.Equal(new DateOnly(2024, 5, 2), test.Shop.Fitments(vehicle)[1].From);

        test.Shop.Undo();
        Assert.Equal(["2 May 2024", "2 May 2024"], Days(vehicle));
    }

    [Fact]
    public void Is_the_same_in_another_record()
    {
        var (vehicle, axle) = (test.Vehicle("Brindle"), test.Axle("Harrow axle"));
        test.Shop.FitSometime(axle, vehicle, Position.RearAxle, Day("before May 2023"));
        using var there = new TestShop();
        var zip = Path.Combine(test.Folder, "shop.zip");
        test.Shop.Export(zip);
        there.Shop.Import(zip);
        var came = Assert.Single(there.Shop.Fitments(there.Shop.FindVehicle("Brindle")));
        Assert.Equal((new DateOnly(2023, 4, 30), null, new DateOnly(2023, 4, 30), "before May 2023"), (came.From, came.FromDay.Earliest, came.FromDay.Latest, came.FromDay.Text));
    }

    private static LooseDay Day(string typed) => LooseDay.Read(typed)!;

    private static string Refused(Action act) => Assert.Throws<RefusedException>(act).Message;

    // When the first came off, and when the second was fitted.
    private string[] Days(Vehicle vehicle)
    {
        var fitments = test.Shop.Fitments(vehicle);
        return [fitments[0].ToDay!.InWords, fitments[1].FromDay.InWords];
    }
}
