using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Vehicles;

public sealed class FindingAVehicle : IDisposable
{
    private readonly TestShop test = new();

    public FindingAVehicle()
    {
        foreach (var name in (string[])["Brindle", "Brindle II", "Ärmel", "Tansy", "İlk"]) test.Vehicle(name);
    }

    public void Dispose() => test.Dispose();

    [Theory]
    [InlineData("tan", "Tansy")]
    [InlineData("TANSY", "Tansy")]
    [InlineData("brindle i", "Brindle II")]
    [InlineData("ä", "Ärmel")]
    [InlineData(" tansy ", "Tansy")]
    public void Goes_by_any_unambiguous_beginning(string beginning, string found) => Assert.Equal(found, test.Shop.FindVehicle(beginning).Name);

    [Fact]
    public void Prefers_the_exact_name() => Assert.Equal("Brindle", test.Shop.FindVehicle("brindle").Name);

    [Fact]
    public void Lists_the_matches_of_an_ambiguous_beginning()
    {
        var refused = Assert.Throws<RefusedException>(() => test.Shop.FindVehicle("bri"));
        Assert.Equal("vehicle", refused.Refusal.Code);
        Assert.Equal("'bri' could be Brindle and Brindle II: write more of the name.", refused.Message);
    }

    [Fact]
    public void Says_which_there_are_when_none_matches()
    {
        var refused = Assert.Throws<RefusedException>(() => test.Shop.FindVehicle("Heron"));
        Assert.Equal("vehicle", refused.Refusal.Code);
        Assert.Equal("No vehicle is called 'Heron' or begins so; there are Ärmel, Brindle, Brindle II, İlk and Tansy.", refused.Message);
    }

    [Fact]
    public void Says_that_an_empty_shop_is_empty()
    {
        using var empty = new TestShop();
        var refused = Assert.Throws<RefusedException>(() => empty.Shop.FindVehicle("Brindle"));
        Assert.Equal("The shop has no vehicles yet; add one first.", refused.Message);
    }

    [Fact]
    public void Lists_names_in_the_order_of_the_alphabet()
        => Assert.Equal(["Ärmel", "Brindle", "Brindle II", "İlk", "Tansy"], test.Shop.Vehicles().Select(vehicle => vehicle.Name));
}
