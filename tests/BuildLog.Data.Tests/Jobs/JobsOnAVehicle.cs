using BuildLog.Data.Costs;
using BuildLog.Data.Hunting;
using BuildLog.Data.Jobs;
using BuildLog.Data.Suppliers;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Jobs;

public sealed class JobsOnAVehicle : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Stand_with_what_is_open_first_by_due_date()
    {
        var vehicle = test.Vehicle("Brindle");
        test.Shop.Add(new Job(vehicle) { Title = "done", State = JobState.Done, Due = new(2026, 1, 1) });
        test.Shop.Add(new Job(vehicle) { Title = "some day" });
        test.Shop.Add(new Job(vehicle) { Title = "soon", Due = new(2026, 5, 1), BeforeHandover = true });
        test.Reopen();
        Assert.Equal(["soon", "some day", "done"], test.Shop.Jobs(vehicle).Select(job => job.Title));
    }

    [Fact]
    public void Wait_for_a_wanted_part_until_it_is_found()
    {
        var vehicle = test.Vehicle("Brindle");
        var axle = test.Shop.Add(new WantedPart(vehicle, WantedKind.Axle) { Title = "longer axle" });
        test.Shop.Add(new Job(vehicle) { Title = "fit it", WaitsForId = axle.Id });
        Assert.True(Assert.Single(test.Shop.Jobs(vehicle)).IsBlocked);
        test.Shop.Change(axle, part => part.State = WantedState.Found);
        Assert.False(Assert.Single(test.Shop.Jobs(vehicle)).IsBlocked);
    }

    [Fact]
    public void Do_not_wait_for_what_another_vehicle_wants()
    {
        var other = test.Shop.Add(new WantedPart(test.Vehicle("Ottery"), WantedKind.Axle) { Title = "longer axle" });
        var refused = Assert.Throws<RefusedException>(() => test.Shop.Add(new Job(test.Vehicle("Brindle")) { Title = "fit it", WaitsForId = other.Id }));
        Assert.Equal("'fit it' cannot wait for the longer axle: that is hunted for another vehicle.", refused.Message);
    }

    [Theory]
    [InlineData("2.5", 150)]
    [InlineData("2,5 h", 150)]
    [InlineData("2:30", 150)]
    [InlineData("2 h 30 min", 150)]
    [InlineData("2 1/2 hours", 150)]
    [InlineData("45 min", 45)]
    [InlineData("8", 480)]
    public void Collect_hours_as_typed(string typed, int minutes)
    {
        var job = test.Shop.Add(new Job(test.Vehicle("Brindle")) { Title = "brakes" });
        test.Shop.Add(new WorkEntry(job) { Date = new(2026, 5, 3), Hours = typed, Who = "Agnes" });
        test.Reopen();
        var work = Assert.Single(test.Shop.Hours(job));
        Assert.Equal((typed, minutes), (work.Hours, work.Minutes));
        Assert.Equal((long)minutes, test.Ask("SELECT sum(Minutes) FROM WorkEntries"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("long")]
    [InlineData("25")]
    [InlineData("0")]
    [InlineData("2:75")]
    public void Refuse_hours_that_nobody_works(string typed)
    {
        var job = test.Shop.Add(new Job(test.Vehicle("Brindle")) { Title = "brakes" });
        Assert.Throws<RefusedException>(() => test.Shop.Add(new WorkEntry(job) { Date = new(2026, 5, 3), Hours = typed }));
        Assert.Empty(test.Shop.Hours(job));
    }

    [Fact]
    public void Know_what_is_out_of_the_house()
    {
        var vehicle = test.Vehicle("Brindle");
        var job = test.Shop.Add(new Job(vehicle) { Title = "propshaft" });
        var shop = test.Shop.Add(new Supplier { Name = "Marl machine works" });
        var sent = test.Shop.Add(new OutsideWork(job, shop) { What = "balance", Sent = new(2026, 5, 3), Promised = new(2026, 5, 10) });
        Assert.Equal("Marl machine works", Assert.Single(test.Shop.OutsideWork(vehicle)).Supplier.Name);
        var refused = Assert.Throws<RefusedException>(() => test.Shop.Change(sent, work => work.Back = new(2026, 5, 2)));
        Assert.Equal("'balance' cannot be back on 2 May 2026, before it was sent on 3 May 2026.", refused.Message);
    }

    [Fact]
    public void Cost_money_that_is_kept_in_the_smallest_unit()
    {
        var vehicle = test.Vehicle("Brindle");
        var yard = test.Shop.Add(new Supplier { Name = "Tolland yard" });
        var job = test.Shop.Add(new Job(vehicle) { Title = "axle" });
        test.Shop.Add(new Cost(vehicle, job) { Date = new(2026, 5, 3), What = "seal", Amount = MoneyText.Read("7,95 €", Currency.Euro).OrRefuse(), SupplierId = yard.Id });
        test.Shop.Add(new Cost(vehicle) { Date = new(2026, 5, 4), What = "oil", Amount = MoneyText.Read("£45", Currency.Euro).OrRefuse() });
        test.Reopen();
        Assert.Equal(["oil", "seal"], test.Shop.Costs(vehicle).Select(cost => cost.What));
        Assert.Equal("Tolland yard", test.Shop.Costs(vehicle)[1].Supplier!.Name);
        Assert.Equal(["795 EUR", "4500 GBP"], test.Shop.Spent(vehicle).Select(sum => $"{sum.Minor} {sum.Currency}"));
        Assert.Equal(5295L, test.Ask("SELECT sum(AmountMinor) FROM Costs"));
    }

    [Fact]
    public void Stay_while_something_names_them()
    {
        var vehicle = test.Vehicle("Brindle");
        var job = test.Shop.Add(new Job(vehicle) { Title = "axle" });
        var work = test.Shop.Add(new WorkEntry(job) { Date = new(2026, 5, 3), Hours = "2" });
        Assert.Equal(
            "The job cannot be taken out while a work in the record names it; take that out first.",
            Assert.Throws<RefusedException>(() => test.Shop.Remove(job)).Message);
        test.Shop.Remove(work);
        test.Shop.Remove(job);
        Assert.Empty(test.Shop.Jobs(vehicle));
    }
}
