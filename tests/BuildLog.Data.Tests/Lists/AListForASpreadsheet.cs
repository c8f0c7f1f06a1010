using System.Globalization;
using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Hunting;
using BuildLog.Data.Jobs;
using BuildLog.Data.Lists;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Lists;

public sealed class AListForASpreadsheet : IDisposable
{
    private readonly TestShop here = new();
    private readonly TestShop there = new();
    private readonly Vehicle brindle;

    public AListForASpreadsheet()
    {
        brindle = here.Vehicle("Brindle");
        here.Shop.Change(here.Axle("Harrow, the \"short\" one"), axle => (axle.Shelf, axle.Notes) = ("rack A", "two\nlines; and a comma, too"));
        var job = here.Shop.Add(new Job(brindle) { Title = "brakes" });
        here.Shop.Add(new Cost(brindle, job) { Date = new(2026, 5, 3), What = "pads", Amount = Money.Of(4860, Currency.Euro) });
        var wanted = here.Shop.Add(new WantedPart(brindle, WantedKind.Axle) { Title = "longer axle" });
        here.Shop.Add(new Offer(wanted) { What = "yard axle", Claimed = "3.36", Seen = new(2026, 5, 4), Price = Money.Of(28000, Currency.Euro) });
    }

    public void Dispose()
    {
        here.Dispose();
        there.Dispose();
    }

    [Fact]
    public void Has_a_row_for_each_cost_with_its_currency()
        => Assert.Equal("vehicle,date,what,amount,supplier,job\r\nBrindle,2026-05-03,pads,48.60 EUR,,brakes\r\n", Written(ListOf.Costs));

    // The first day that each can have been sets their order: 1 January, 1 March, 3 May.
    [Fact]
    public void Keeps_days_as_far_as_they_are_known_and_their_order()
    {
        here.Shop.Add(new Cost(brindle) { Day = LooseDay.Read("spring 2026")!, What = "seals", Amount = Money.Of(1990, Currency.Euro) });
        here.Shop.Add(new Cost(brindle) { Day = LooseDay.Read("2026")!, What = "oil", Amount = Money.Of(2000, Currency.Euro) });
        Assert.Equal("vehicle,date,what,amount,supplier,job\r\nBrindle,2026,oil,20.00 EUR,,\r\nBrindle,spring 2026,seals,19.90 EUR,,\r\nBrindle,2026-05-03,pads,48.60 EUR,,brakes\r\n", Written(ListOf.Costs));

        there.Shop.Add(new Job(there.Vehicle("Brindle")) { Title = "brakes" });
        Assert.Equal(3, Read(ListOf.Costs, Written(ListOf.Costs)));
        Assert.Equal(Written(ListOf.Costs), Written(ListOf.Costs, there));
        Assert.Equal(0, Read(ListOf.Costs, Written(ListOf.Costs)));
    }

    [Theory]
    [InlineData(ListOf.Parts)]
    [InlineData(ListOf.Offers)]
    [InlineData(ListOf.Costs)]
    public void Comes_back_as_it_went(ListOf what)
    {
        var vehicle = there.Vehicle("Brindle");
        there.Shop.Add(new Job(vehicle) { Title = "brakes" });
        there.Shop.Add(new WantedPart(vehicle, WantedKind.Axle) { Title = "longer axle" });
        Assert.Equal(1, Read(what, Written(what)));
        Assert.Equal(Written(what), Written(what, there));

        // A second time there is nothing new in it.
        Assert.Equal(0, Read(what, Written(what)));
    }

    [Theory]
    [InlineData("=HYPERLINK(\"http://x\")")]
    [InlineData("@SUM(1)")]
    [InlineData("+1")]
    [InlineData("-1 seal")]
    [InlineData("'quoted")]
    public void Holds_no_cell_that_a_spreadsheet_would_run(string name)
    {
        here.Shop.Change(here.Shop.Parts().Single().Component, part => part.Name = name);
        var written = Written(ListOf.Parts);
        Assert.Contains("'" + name[..2], written, StringComparison.Ordinal);
        Assert.Equal(1, Read(ListOf.Parts, written));
        Assert.Equal(name, there.Shop.Parts().Single().Component.Name);
    }

    [Fact]
    public void May_be_parted_by_semicolons_and_leave_columns_out()
    {
        there.Vehicle("Brindle");
        Assert.Equal(2, Read(ListOf.Costs, "vehicle;date;what;amount\nbrindle;2026-05-03;pads;48,60 €\nbrindle;2026-05-04;line;12\n"));
        Assert.Equal([1200, 4860], there.Shop.Costs(there.Shop.FindVehicle("Brindle")).Select(cost => cost.Amount!.Minor));
    }

    // The stored row says 280.00 EUR.
    [Theory]
    [InlineData("280 EUR", 0)]
    [InlineData("€280.00", 0)]
    [InlineData(" 280,- ", 0)]
    [InlineData("280 USD", 1)]
    [InlineData("281 EUR", 1)]
    [InlineData("", 1)]
    public void Takes_no_offer_twice_however_its_price_is_spelt(string price, int added)
    {
        var vehicle = there.Vehicle("Brindle");
        there.Shop.Add(new WantedPart(vehicle, WantedKind.Axle) { Title = "longer axle" });
        Read(ListOf.Offers, Written(ListOf.Offers));
        Assert.Equal("took in 1 row of a list", there.Shop.Changes()[0].Label);
        Assert.Equal(added, Read(ListOf.Offers, $"wanted;what;claimed;price;seen\nLonger axle;yard axle;3.36;{price};2026-05-04\n"));
    }

    [Theory]
    [InlineData("vehicle,date,what,amount\nBrindle,2026-05-03,pads,1\nBrindle,3 May,line,1\n", "row 3 cannot be: '3 May' is no date of the form year-month-day")]
    [InlineData("vehicle,date,what,amount\nBrindle,2026-05-03,pads,lots\n", "row 2 cannot be: 'lots' is no amount of money")]
    [InlineData("vehicle,date,what,amount,job\nBrindle,2026-05-03,pads,1,paint\n", "row 2 cannot be: Brindle has no job 'paint'")]
    [InlineData("vehicle,date,what,amount\nBrindle,2026-05-03,pa\u001bds,1\n", "row 2 holds signs that are no text")]
    public void Is_taken_in_whole_or_not_at_all(string csv, string says)
    {
        there.Vehicle("Brindle");
        Assert.Equal($"Nothing was taken in: {says}.", Assert.Throws<RefusedException>(() => Read(ListOf.Costs, csv)).Message);
        Assert.Empty(there.Shop.Costs(there.Shop.FindVehicle("Brindle")));
    }

    [Theory]
    [InlineData("", "The file is empty.")]
    [InlineData("vehicle,wings\nBrindle,2\n", "The file has a column 'wings' that belongs in no such list; there are vehicle, date, what, amount, supplier, job.")]
    public void Is_refused_where_it_is_no_such_list(string csv, string says)
        => Assert.Equal(says, Assert.Throws<RefusedException>(() => Read(ListOf.Costs, csv)).Message);

    private string Written(ListOf what, TestShop? of = null)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        (of ?? here).Shop.WriteList(what, text);
        return text.ToString();
    }

    private int Read(ListOf what, string csv)
    {
        using var text = new StringReader(csv);
        return there.Shop.ReadList(what, text);
    }
}
