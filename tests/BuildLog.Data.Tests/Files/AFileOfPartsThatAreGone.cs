using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>PartsThatAreGone.sql is the demo shop as the eighth schema held it: nobody could say what a vehicle is.</summary>
public sealed class AFileOfPartsThatAreGone : IDisposable
{
    private readonly EarlierShop earlier = new("PartsThatAreGone.sql");

    public void Dispose() => earlier.Dispose();

    [Fact]
    public void Says_of_a_vehicle_what_it_is_once_somebody_told()
    {
        var vehicle = earlier.Shop.Vehicles().Single(one => one.Name == "Brindle");
        Assert.Equal("", vehicle.Description);

        earlier.Shop.Change(vehicle, told => told.Description = "half-ton pick-up of 1971");

        Assert.Equal("half-ton pick-up of 1971", earlier.Shop.Vehicles().Single(one => one.Name == "Brindle").Description);
        earlier.AssertSoundButForItsFiles();
    }
}
