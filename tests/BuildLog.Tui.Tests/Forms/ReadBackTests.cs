using BuildLog.Data.Costs;
using BuildLog.Data.Fitments;
using BuildLog.Data.Goals;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Fitments;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Goals;

namespace BuildLog.Tui.Tests.Forms;

/// <summary>What can be written in several ways is read back beside its entry while it is typed.</summary>
public sealed class ReadBackTests
{
    // 1 mi = 1.609344 km: 84 210 km are 52 325.7 mi, 84.21 km 52.33, and 52 325 mi 84 208.9 km.
    [Theory]
    [InlineData("84 210", OdometerUnit.Kilometres, "= 84210 km = 52326 mi")]
    [InlineData("84.21", OdometerUnit.Kilometres, "= 84.21 km = 52.33 mi")]
    [InlineData("52 325", OdometerUnit.Miles, "= 52325 mi = 84209 km")]
    [InlineData("84.210", OdometerUnit.Kilometres, null)]
    [InlineData("", OdometerUnit.Kilometres, null)]
    public void An_odometer_reading_is_read_back_in_both_units(string typed, OdometerUnit unit, string? echo)
        => Assert.Equal(echo, OdometerEntry.Of("odometer", "Odometer", unit).Echo!(Typed("odometer", typed)));

    [Fact]
    public void An_odometer_reading_with_a_point_is_refused_unless_it_stood_there()
    {
        var known = OdometerReading.Read("84.21", OdometerUnit.Kilometres)!;

        Assert.Contains("could be 84 210 or 84.21", OdometerEntry.Of("odometer", "Odometer", OdometerUnit.Kilometres, known).Check!(Typed("odometer", "84.210")), StringComparison.Ordinal);
        Assert.Null(OdometerEntry.Of("odometer", "Odometer", OdometerUnit.Kilometres, known).Check!(Typed("odometer", "84.21 km")));
        Assert.Null(OdometerEntry.Of("odometer", "Odometer", OdometerUnit.Kilometres).Check!(Typed("odometer", "")));
    }

    [Theory]
    [InlineData("1.500,00 EUR", "= 1500.00 EUR")]
    [InlineData("1.500", "= 1500.00 GBP")]
    [InlineData("150", "= 150.00 GBP")]
    [InlineData("150.00 GBP", null)]
    [InlineData("", null)]
    [InlineData("-5", null)]
    public void A_price_is_read_back_with_its_currency(string typed, string? echo)
        => Assert.Equal(echo, MoneyEntry.IfAny("price", "Price", "", text => MoneyText.ReadPrice(text, Currency.Find("GBP")!)).Echo!(Typed("price", typed)));

    // 5 % of 2400 is 120.
    [Theory]
    [InlineData("", "= 2280 to 2520 rev/min")]
    [InlineData("at most", "= 2400 rev/min or less")]
    [InlineData("5", "? Is ± 5 rev/min meant? Hardly a rev counter is read so closely; else write 5 % or 50 rev/min.")]
    public void What_a_tolerance_allows_stands_beside_it(string typed, string echo)
    {
        var form = GoalForm.For(new CruiseGoalEntry(new Vehicle { Name = "Bittern" }), [], _ => { });
        var values = new FormValues(new Dictionary<string, string> { ["speed"] = "110 km/h", ["engine"] = "2400", ["tolerance"] = typed, ["gear"] = "top" });

        Assert.Equal(echo, form.Entries.Single(entry => entry.Id == "tolerance").Echo!(values));
        Assert.Single(form.Echo!(values)); // the question is not asked twice
    }

    private static FormValues Typed(string id, string text) => new(new Dictionary<string, string> { [id] = text });
}
