using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Vehicles;

public sealed class EnteringAVehicle : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Keeps_everything_over_a_restart()
    {
        var entered = test.Shop.Add(new Vehicle
        {
            Name = "Brindle",
            State = VehicleState.OnTheRoad,
            Owner = "Agnes Thorley",
            Description = "pick-up",
            ChassisNumber = "WX-1",
            Registration = "BT 417",
            DrivesInFront = true,
            OdometerUnit = OdometerUnit.Miles,
            Notes = "two\nlines",
        });
        test.Reopen();
        Assert.Equivalent(entered, Assert.Single(test.Shop.Vehicles()), strict: true);
        Assert.NotEqual(0, entered.Id);
        Assert.Equal(7, entered.Uid.Version);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    public void Needs_a_name(string name)
    {
        var refused = Assert.Throws<RefusedException>(() => test.Shop.Add(new Vehicle { Name = name }));
        Assert.Equal("A vehicle needs a name.", refused.Message);
        Assert.Empty(test.Shop.Vehicles());
    }

    [Theory]
    [InlineData("Ärmel", "ÄRMEL")]
    [InlineData("Brindle", " brindle ")]
    public void Needs_a_name_of_its_own_large_and_small_letters_alike(string one, string other)
    {
        test.Vehicle(one);
        var refused = Assert.Throws<RefusedException>(() => test.Vehicle(other));
        Assert.Equal($"The shop already has a vehicle called '{other.Trim()}'; give this one another name.", refused.Message);
        Assert.Single(test.Shop.Vehicles());
    }

    [Fact]
    public void May_be_corrected()
    {
        var vehicle = test.Vehicle("Brindel");
        var corrected = test.Shop.Change(vehicle, v => v.Name = "Brindle");
        Assert.Equal("Brindel", vehicle.Name);
        Assert.Equal("Brindle", corrected.Name);
        Assert.Equal("Brindle", test.Shop.FindVehicle("brindle").Name);
        Assert.Equal(vehicle.Uid, test.Shop.FindVehicle("brindle").Uid);
    }

    [Fact]
    public void A_correction_that_cannot_be_changes_nothing()
    {
        var vehicle = test.Vehicle("Brindle");
        Assert.Throws<RefusedException>(() => test.Shop.Change(vehicle, v => v.Name = ""));
        Assert.Equal("Brindle", Assert.Single(test.Shop.Vehicles()).Name);
    }

    [Fact]
    public void A_correction_of_what_another_window_changed_is_not_lost_silently()
    {
        var asRead = test.Vehicle("Brindle");
        test.Shop.Change(asRead, v => v.Owner = "Agnes");
        var refused = Assert.Throws<RecordException>(() => test.Shop.Change(asRead, v => v.Owner = "Piet"));
        Assert.Equal(Fault.ChangedSince, refused.Fault);
        Assert.Equal("Agnes", Assert.Single(test.Shop.Vehicles()).Owner);
        test.Shop.Change(test.Shop.FindVehicle("Brindle"), v => v.Owner = "Piet");
        Assert.Equal("Piet", Assert.Single(test.Shop.Vehicles()).Owner);
    }
}
