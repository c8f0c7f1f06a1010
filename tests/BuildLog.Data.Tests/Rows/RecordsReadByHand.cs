using BuildLog.Data.Attachments;
using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Deadlines;
using BuildLog.Data.Files;
using BuildLog.Data.Fitments;
using BuildLog.Data.Goals;
using BuildLog.Data.Identity;
using BuildLog.Data.Jobs;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.DemoData;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace BuildLog.Data.Tests.Rows;

/// <summary>Beside the same read by the object mapper. A column that a reader forgets turns this red.</summary>
public sealed class RecordsReadByHand : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Are_the_mappers_in_every_column()
    {
        ShopOfEveryKind.Enter(test.Shop);
        GiveEveryRecordAVersion();
        var unfilled = AssertTheSame(test.Shop);
        Assert.Empty(unfilled);
    }

    [Fact]
    public void Are_the_mappers_in_the_demo_shop()
    {
        var path = DemoShop.CreateFreshCopy();
        using (var shop = ShopFile.Open(path)) AssertTheSame(shop);
        Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
    }

    [Fact]
    public void Are_the_mappers_in_a_shop_of_months()
    {
        new BulkShop(test.Shop).Fill(vehicles: 3, swaps: 4);
        AssertTheSame(test.Shop);
    }

    [Fact]
    public void Are_one_wherever_they_are_named()
    {
        new BulkShop(test.Shop).Fill(vehicles: 1, swaps: 2);
        var fitments = test.Shop.Fitments(test.Shop.FindVehicle("Project"));
        Assert.Same(fitments[0].Vehicle, fitments[^1].Vehicle);
        var sessions = test.Shop.Sessions(fitments[^1].Component);
        Assert.Same(sessions[0].Component, sessions[^1].Component);
    }

    /// <returns>The columns in which nothing was, so that nothing is said of them.</returns>
    private static IEnumerable<string> AssertTheSame(Shop shop)
    {
        using var db = new ShopContext(ShopContext.OptionsFor(shop.Path));
        db.ChangeTracker.QueryTrackingBehavior = QueryTrackingBehavior.NoTrackingWithIdentityResolution;
        var mapped = new AsMapped(db);
        var vehicles = shop.Vehicles();
        var parts = shop.Parts().Select(place => place.Component).ToList();
        Same<Vehicle>(vehicles);
        Same<Component>(parts);
        Same<Fitment>(vehicles.SelectMany(shop.Fitments));
        Same<OdometerChange>(vehicles.SelectMany(shop.OdometerChanges));
        Same<Session>(vehicles.SelectMany(shop.Sessions).Concat(parts.SelectMany(shop.Sessions)).DistinctBy(session => session.Id));
        Same<GoalEntry>(vehicles.SelectMany(shop.Goals));
        Same<Cost>(vehicles.SelectMany(shop.Costs));
        Same<IdentityNumber>([.. vehicles.SelectMany(shop.Numbers), .. parts.SelectMany(shop.Numbers)]);
        Same<Attachment>([.. vehicles.SelectMany(shop.AttachmentsOf), .. shop.Suppliers().SelectMany(shop.AttachmentsOf), .. vehicles.SelectMany(shop.Jobs).SelectMany(shop.AttachmentsOf)]);
        Same<Job>(vehicles.SelectMany(shop.Jobs));
        Same<WorkEntry>(vehicles.SelectMany(shop.Hours));
        Same<OutsideWork>(vehicles.SelectMany(shop.OutsideWork));
        Same<Deadline>(shop.Deadlines());
        Same<RoadTest>(vehicles.SelectMany(shop.RoadTests));
        Same<Retorque>(vehicles.SelectMany(shop.Retorques));
        return mapped.Met.Except(mapped.Filled);

        void Same<T>(IEnumerable<T> byHand)
            where T : Kept
            => Assert.Equal(mapped.Lines(db.Set<T>().ToList()), mapped.Lines(byHand));
    }

    private void GiveEveryRecordAVersion()
    {
        foreach (var table in (string[])["Vehicles", "Components", "Fitments", "OdometerChanges", "Sessions", "Goals", "Costs", "IdentityNumbers", "Attachments", "Suppliers", "Donors", "Jobs", "WantedParts", "WorkEntries", "OutsideWorks", "Deadlines", "RoadTests", "Retorques"])
            test.Ask($"UPDATE \"{table}\" SET \"Version\" = \"Id\" + 6");
    }
}
