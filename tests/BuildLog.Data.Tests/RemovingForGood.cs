using BuildLog.Data.Goals;
using BuildLog.Data.Jobs;
using BuildLog.Data.Notes;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Data.Tests;

public sealed class RemovingForGood : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void A_vehicle_goes_with_what_hangs_on_it_and_comes_back_whole()
    {
        var (vehicle, axle) = (test.Vehicle("Brindle"), test.Axle("Harrow axle"));
        test.Shop.Fit(axle, vehicle, Position.RearAxle, new(2026, 5, 3), "84 210");
        test.Shop.Add(new TurnCountSession(axle, vehicle) { Date = new(2026, 5, 4), Wheels = Wheels.OneHeld, Readings = ["10:20.5"] });
        test.Shop.Add(new CruiseGoalEntry(vehicle) { Speed = "110 km/h", EngineSpeed = "2400" });
        test.Shop.Add(new CruiseGoalEntry(vehicle) { Speed = "70 mph", EngineSpeed = "3000" });
        Assert.Equal("Brindle still has the Harrow axle fitted: take everything off first, or remove it with everything.", Refused(() => test.Shop.Remove(vehicle)));
        Assert.Equal("2 cruise goals and 1 fitment", test.Shop.WhatGoesWith(vehicle));

        test.Shop.Remove(vehicle, withEverything: true);
        Assert.Empty(test.Shop.Vehicles());

        // The count is the axle's; it stays and forgets the vehicle.
        Assert.Null(Assert.Single(test.Shop.Sessions(axle)).Vehicle);
        Assert.Null(Assert.Single(test.Shop.Parts()).Fitment);
        test.Reopen();
        Assert.Equal("removed vehicle Brindle with 2 cruise goals and 1 fitment", test.Shop.Undo());
        var back = test.Shop.FindVehicle("Brindle");
        Assert.Equal((vehicle.Id, vehicle.Uid), (back.Id, back.Uid));
        Assert.Equal(["110 km/h", "70 mph"], test.Shop.Goals(back).OfType<CruiseGoalEntry>().Select(goal => goal.Speed));
        Assert.Equal("84 210 km", Assert.Single(test.Shop.Fitments(back)).FromOdometer!.InWords);
        Assert.Equal("Brindle", Assert.Single(test.Shop.Sessions(axle)).Vehicle!.Name);
        Assert.Null(test.Ask("PRAGMA foreign_key_check"));
    }

    [Fact]
    public void A_vehicle_takes_nothing_along_unasked()
    {
        var (vehicle, axle) = (test.Vehicle("Brindle"), test.Axle("Harrow axle"));
        test.Shop.Fit(axle, vehicle, Position.RearAxle, new(2026, 5, 3));
        test.Shop.TakeOff(axle, new(2026, 6, 1));
        var job = test.Shop.Add(new Job(vehicle) { Title = "rear brake lines" });
        foreach (var day in (int[])[1, 2]) test.Shop.Add(new WorkEntry(job) { Date = new(2026, 6, day), Hours = "2:30" });
        test.Shop.Add(new CruiseGoalEntry(vehicle) { Speed = "110 km/h", EngineSpeed = "2400" });
        Assert.Equal(
            "Brindle would take along 2 entries of work, 1 cruise goal, 1 fitment and 1 job: remove it with everything if they may go, or keep it and say that it was handed over.",
            Refused(() => test.Shop.Remove(vehicle)));
        Assert.Equal("Brindle", Assert.Single(test.Shop.Vehicles()).Name);

        test.Shop.Remove(test.Shop.Add(new Vehicle { Name = "typed by mistake" }));
        test.Shop.Remove(vehicle, withEverything: true);
        Assert.Empty(test.Shop.Vehicles());
    }

    [Fact]
    public void A_part_goes_with_its_sessions_only_when_asked_and_never_if_it_was_fitted()
    {
        var (vehicle, axle) = (test.Vehicle("Brindle"), test.Axle("Harrow axle"));
        test.Shop.Fit(axle, vehicle, Position.RearAxle, new(2026, 5, 3));
        test.Shop.TakeOff(axle, new(2026, 6, 1));
        Assert.Equal(
            "The Harrow axle was fitted to Brindle as axle from 3 May 2026 to 1 June 2026: strike that fitment first if it never was.",
            Refused(() => test.Shop.Remove(axle)));
        test.Shop.Remove(Assert.Single(test.Shop.Fitments(vehicle)));
        test.Shop.Add(new TurnCountSession(axle) { Date = new(2026, 5, 4), Wheels = Wheels.OneHeld, Readings = ["10:20.5", "10:20.5"] });
        test.Shop.Add(new Note(axle) { Date = new(2026, 5, 4), Body = "oil like honey" });
        Assert.Equal("The Harrow axle would take along 1 turn count: remove it with everything if they may go.", Refused(() => test.Shop.Remove(axle)));
        Assert.Equal(2, Assert.Single(test.Shop.Sessions(axle)).Readings.Count);

        test.Shop.Remove(axle, withEverything: true);
        Assert.Empty(test.Shop.Parts());
        Assert.Equal(0L, test.Ask("SELECT count(*) FROM Readings"));
        Assert.Equal("removed axle Harrow axle with 1 turn count", test.Shop.Undo());
        Assert.Equal(2, Assert.Single(test.Shop.Sessions(axle)).Readings.Count);
        Assert.Equal("oil like honey", Assert.Single(test.Shop.NotesOf(axle)).Body);
    }

    [Fact]
    public void What_measured_the_vehicle_itself_goes_with_it_and_comes_back()
    {
        var vehicle = test.Vehicle("Brindle");
        test.Shop.Add(new WeighbridgeSession(vehicle) { Date = new(2026, 5, 4), Readings = ["front 700 kg", "rear 750 kg"] });
        Assert.Equal("1 weighbridge", test.Shop.WhatGoesWith(vehicle));
        Assert.Equal("Brindle would take along 1 weighbridge: remove it with everything if they may go, or keep it and say that it was handed over.", Refused(() => test.Shop.Remove(vehicle)));

        test.Shop.Remove(vehicle, withEverything: true);
        Assert.Equal(0L, test.Ask("SELECT (SELECT count(*) FROM Sessions) + (SELECT count(*) FROM Readings)"));
        Assert.Equal("removed vehicle Brindle with 1 weighbridge", test.Shop.Undo());
        Assert.Equal(["front 700 kg", "rear 750 kg"], Assert.Single(test.Shop.Sessions(test.Shop.FindVehicle("Brindle"))).Readings);
    }

    private static string Refused(Action act) => Assert.Throws<RefusedException>(act).Message;
}
