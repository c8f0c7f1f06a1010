using BuildLog.Data.Components;
using BuildLog.Data.Days;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using Xunit;

namespace BuildLog.Data.Tests.Drivelines;

/// <summary>A drive speaks of the parts it was driven with only where its day says which. The axle was swapped on 1 May 2024.</summary>
public sealed class DrivenOnADayHalfRemembered : IDisposable
{
    private readonly TestShop test = new();
    private readonly Vehicle vehicle;

    public DrivenOnADayHalfRemembered()
    {
        vehicle = test.Vehicle("Brindle");
        test.Shop.Fit(test.Gearbox("1.00"), vehicle, Position.Transmission, new(2024, 1, 1), "", "");
        test.Shop.Fit(test.Shop.Add(new WheelSetComponent { Name = "wheels", StatedCircumference = Noted.Length("2.04 m", Source.OwnersWord) }), vehicle, Position.Tyres, new(2024, 1, 1), "", "");
        test.Shop.Fit(test.Axle("long", "3.75"), vehicle, Position.RearAxle, new(2024, 1, 1), "", "");
        test.Shop.Fit(test.Axle("short", "3.08"), vehicle, Position.RearAxle, new(2024, 5, 1), "", "");
    }

    public void Dispose() => test.Dispose();

    [Theory]
    [InlineData("April 2024", "long")]
    [InlineData("30 April 2024", "long")]
    [InlineData("May 2024", "short")]
    [InlineData("2025", "short")]
    [InlineData("spring 2024", null)]
    [InlineData("since April 2024", null)]
    [InlineData("unknown", null)]
    public void Has_a_driveline_where_no_swap_lies_within_it(string typed, string? axle)
        => Assert.Equal(axle, test.Shop.DrivelineWhen(vehicle, LooseDay.Read(typed)!)?.At(Position.RearAxle)?.Name);

    // 2450 / 60 turns a second · 2.04 m / (80 / 3.6 m/s) = 3.749.
    [Theory]
    [InlineData("June 2024", "2024-06-30", 1)]
    [InlineData("June 2024", "2024-06-15", 0)]
    [InlineData("spring 2024", "2024-06-30", 0)]
    [InlineData("April 2024", "2024-04-30", 1)]
    [InlineData("April 2024", "2024-06-30", 0)]
    public void Counts_for_an_axle_that_it_was_surely_driven_with(string typed, string looked, int drives)
    {
        var gear = test.Shop.DrivelineOn(vehicle, new(2024, 6, 30)).Driveline.Steps[0].Name;
        test.Shop.Add(new RoadTest(vehicle) { Day = LooseDay.Read(typed)!, Gear = gear, Speed = Noted.Speed("80 km/h", Source.Measured), EngineSpeed = Noted.EngineSpeed("2450 rpm", Source.Measured) });

        var again = test.Shop.DrivelineOn(vehicle, DateOnly.Parse(looked, System.Globalization.CultureInfo.InvariantCulture)).Driveline.MeasuredAgain;
        Assert.Equal(Enumerable.Repeat(3.749, drives), again.Select(each => Math.Round(each.Other.Value.Value, 3)));
        Assert.All(again, each => Assert.Equal($"road test of {typed}", each.Other.Says));
    }
}
