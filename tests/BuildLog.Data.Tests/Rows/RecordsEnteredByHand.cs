using Microsoft.EntityFrameworkCore;
using Xunit;

namespace BuildLog.Data.Tests.Rows;

/// <summary>What the object mapper finds of them in the file is what was entered. A column that is left out turns this red.</summary>
public sealed class RecordsEnteredByHand : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Are_in_the_file_in_every_column()
    {
        var entered = ShopOfEveryKind.Enter(test.Shop);
        using var db = new ShopContext(ShopContext.OptionsFor(test.Path));
        db.ChangeTracker.QueryTrackingBehavior = QueryTrackingBehavior.NoTrackingWithIdentityResolution;
        var mapped = new AsMapped(db);
        foreach (var entry in entered)
        {
            var stored = Everything.Of(db, entry.GetType()).Single(record => record.Id == entry.Id);
            Assert.Equal(mapped.Lines([stored]), mapped.Lines([entry]));
        }

        Assert.Equal(["Fitment"], KindsBut(db, entered));
        Assert.DoesNotContain(mapped.Met.Except(mapped.Filled), column => !column.EndsWith(".Version", StringComparison.Ordinal));
    }

    [Fact]
    public void Are_in_the_log_with_every_row()
    {
        var entered = ShopOfEveryKind.Enter(test.Shop);
        while (test.Shop.Changes().Count > 0 && test.Ask("SELECT count(*) FROM Vehicles") is not 0L) test.Shop.Undo();
        Assert.NotEmpty(entered);
        foreach (var table in (string[])["Vehicles", "Components", "Sessions", "Readings", "Specs", "WantedParts", "Notes", "PlannedChanges"])
            Assert.Equal((table, 0L), (table, test.Ask($"SELECT count(*) FROM \"{table}\"")));
    }

    // A fitment is not entered by itself: it comes of fitting.
    private static IEnumerable<string> KindsBut(ShopContext db, IReadOnlyList<Entered> entered)
        => db.Model.GetEntityTypes().Where(type => type.IsKept() && !type.ClrType.IsAbstract).Select(type => type.ClrType).Except(entered.Select(entry => entry.GetType())).Select(type => type.Name);
}
