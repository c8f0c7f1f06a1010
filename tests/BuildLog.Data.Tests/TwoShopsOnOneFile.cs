using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests;

public sealed class TwoShopsOnOneFile : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void See_each_others_writes()
    {
        var other = test.Open();
        Assert.Empty(other.Vehicles());
        test.Vehicle("Brindle");
        Assert.Equal("Brindle", Assert.Single(other.Vehicles()).Name);
        other.Change(other.FindVehicle("Brindle"), vehicle => vehicle.Owner = "Agnes");
        Assert.Equal("Agnes", test.Shop.FindVehicle("Brindle").Owner);
    }

    [Fact]
    public void Do_not_fit_one_part_twice()
    {
        var other = test.Open();
        var (one, two, axle) = (test.Vehicle("Brindle"), test.Vehicle("Tansy"), test.Axle("a"));
        test.Shop.Fit(axle, one, Position.RearAxle, new(2026, 5, 3));
        Assert.Throws<RefusedException>(() => other.Fit(axle, two, Position.RearAxle, new(2026, 5, 3)));
    }

    [Fact]
    public async Task Write_in_turn_without_losing_anything()
    {
        var other = test.Open();
        var token = TestContext.Current.CancellationToken;
        await Task.WhenAll(
            Task.Run(() => Enumerable.Range(0, 20).ToList().ForEach(k => test.Shop.Add(new Vehicle { Name = $"left {k}" })), token),
            Task.Run(() => Enumerable.Range(0, 20).ToList().ForEach(k => other.Add(new Vehicle { Name = $"right {k}" })), token));
        Assert.Equal(40, test.Shop.Vehicles().Count);
    }
}
