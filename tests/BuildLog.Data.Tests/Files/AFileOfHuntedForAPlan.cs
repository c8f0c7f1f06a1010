using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Jobs;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>HuntedForAPlan.sql is the demo shop as the tenth schema held it: what was done had to be known to the day.</summary>
public sealed class AFileOfHuntedForAPlan : IDisposable
{
    private readonly EarlierShop earlier = new("HuntedForAPlan.sql");

    public void Dispose() => earlier.Dispose();

    // Counted 2024-10-26 in the dump.
    [Fact]
    public void Takes_a_day_as_far_as_it_is_known()
    {
        var brindle = earlier.Shop.FindVehicle("Brindle");
        var count = earlier.Shop.Sessions(brindle).OfType<TurnCountSession>().Single();
        Assert.Equal(new DateOnly(2024, 10, 26), count.Day.Earliest);

        earlier.Shop.Change(count, edited => edited.Day = LooseDay.Read("autumn 2024")!);
        earlier.Shop.Add(new Cost(brindle) { What = "seals", Amount = Money.Of(1990, Currency.Euro), Day = LooseDay.Read("spring 2024")! });

        // The day it was reckoned on stays where it can; else it is the first it can have been.
        count = earlier.Shop.Sessions(brindle).OfType<TurnCountSession>().Single();
        var cost = earlier.Shop.Costs(brindle).Single(each => each.What == "seals");
        Assert.Equal(("autumn 2024", new DateOnly(2024, 10, 26)), (count.Day.Text, count.Date));
        Assert.Equal(("spring 2024", new DateOnly(2024, 3, 1)), (cost.Day.Text, cost.Date));
        Assert.Equal("of autumn 2024", count.ToString());

        earlier.Shop.Change(cost, edited => edited.Date = new(2024, 4, 2));
        Assert.True(earlier.Shop.Costs(brindle).Single(each => each.What == "seals").Day.IsExact);
        earlier.AssertSoundButForItsFiles();
    }

    [Fact]
    public void Refuses_a_day_that_nothing_bounds()
    {
        var brindle = earlier.Shop.FindVehicle("Brindle");
        Assert.Throws<RefusedException>(() => earlier.Shop.Add(new Cost(brindle) { What = "seals", Amount = Money.Of(1990, Currency.Euro) }, edited => edited.Day = LooseDay.Read("unknown")!));
        Assert.DoesNotContain(earlier.Shop.Costs(brindle), cost => cost.What == "seals");
    }

    // Sent in May, back some time in spring: it was not back before it was sent.
    [Fact]
    public void Reckons_work_given_out_back_no_sooner_than_sent()
    {
        var work = new OutsideWork(earlier.Shop.Jobs(earlier.Shop.FindVehicle("Brindle"))[0], earlier.Shop.Suppliers()[0])
        {
            What = "balance",
            SentDay = LooseDay.Read("May 2024")!,
            BackDay = LooseDay.Read("spring 2024"),
        };
        var kept = earlier.Shop.Add(work);
        Assert.Equal((new DateOnly(2024, 5, 1), new DateOnly(2024, 5, 1), "spring 2024"), (kept.Sent, kept.Back, kept.BackDay!.Text));
    }
}
