using BuildLog.Data.Changes;
using BuildLog.Data.Costs;
using BuildLog.Data.Files;
using BuildLog.Data.Hunting;
using BuildLog.Data.Vehicles;
using BuildLog.DemoData;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace BuildLog.Data.Tests.Changes;

public sealed class TheLogOfChanges : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Says_when_and_what_with_the_values_before_and_after()
    {
        using var shop = ShopFile.Open(test.Path, new StoppedClock(new(2026, 5, 3, 21, 4, 0, TimeSpan.FromHours(2))));
        var vehicle = shop.Add(new Vehicle { Name = "Brindel", Owner = "Agnes" });
        shop.Change(vehicle, v => (v.Name, v.Owner) = ("Brindle", ""));
        var last = shop.Changes()[0];
        Assert.Equal("changed vehicle Brindle", last.Label);
        Assert.Equal(new DateTimeOffset(2026, 5, 3, 19, 4, 0, TimeSpan.Zero), last.When);
        Assert.Equal(Environment.MachineName, last.Machine);
        Assert.Equal([("name", "Brindel", "Brindle"), ("owner", "Agnes", null)], last.Fields.Select(field => (field.Field, field.Before, field.After)).OrderBy(field => field.Field, StringComparer.Ordinal));
    }

    [Fact]
    public void What_is_saved_as_it_was_is_no_change()
    {
        var axle = test.Axle("Harrow axle");
        var before = test.Shop.Changes().Count;

        test.Shop.Change(axle, part => part.Name = "Harrow axle");

        Assert.Equal(before, test.Shop.Changes().Count);
        Assert.Equal(axle.Version, test.Shop.Parts().Single().Component.Version);
    }

    // A name within another word is not said.
    [Theory]
    [InlineData("gearbox for Old Blue", "added wanted part gearbox for Old Blue")]
    [InlineData("gearbox for Old Bluebell", "added wanted part gearbox for Old Bluebell of Old Blue")]
    [InlineData("longer axle", "added wanted part longer axle of Old Blue")]
    public void Names_the_vehicle_once(string title, string label)
    {
        var vehicle = test.Vehicle("Old Blue");
        test.Shop.Add(new WantedPart(vehicle, WantedKind.Transmission) { Title = title });

        Assert.Equal(label, test.Shop.Changes()[0].Label);
    }

    [Fact]
    public void Tells_an_amount_as_money_also_where_only_half_of_it_changed()
    {
        var axle = test.Axle("Harrow axle");
        axle = test.Shop.Change(axle, part => part.Price = Money.Of(12000, Currency.Euro));
        Assert.Equal(("price", null, "120.00 EUR"), Price());
        axle = test.Shop.Change(axle, part => part.Price = Money.Of(1234500, Currency.Euro));
        Assert.Equal(("price", "120.00 EUR", "12345.00 EUR"), Price());
        axle = test.Shop.Change(axle, part => part.Price = Money.Of(1234500, Currency.Find("JPY")!));
        Assert.Equal(("price", "12345.00 EUR", "1234500 JPY"), Price());
        test.Shop.Undo();
        Assert.Equal(("price", "1234500 JPY", "12345.00 EUR"), Price());
        test.Shop.Change(test.Shop.Parts().Single().Component, part => part.Price = null);
        Assert.Equal(("price", "12345.00 EUR", null), Price());
        Assert.Equal(("price", "12345.00 EUR", null), Price(test.ChangesOf(axle)[0]));

        (string, string?, string?) Price(ChangeSet? of = null)
        {
            var field = Assert.Single((of ?? test.Shop.Changes()[0]).Fields, field => field.Field.StartsWith("price", StringComparison.Ordinal));
            return (field.Field, field.Before, field.After);
        }
    }

    [Theory]
    [InlineData("{\"Name\":[null,{}]}")]
    [InlineData("{\"Name\":[null]}")]
    [InlineData("{\"Name\":\"Brindle\"}")]
    [InlineData("[]")]
    [InlineData("{")]
    public void Says_that_it_is_damaged_where_no_program_wrote_it_so(string diff)
    {
        var refused = Assert.Throws<RecordException>(() => RowDiff.Parse(diff));
        Assert.Equal(Fault.Damaged, refused.Fault);
        Assert.Equal("The log of changes is damaged: one of its values cannot be read. Keep it as it is, and restore the newest copy from its backups folder: buildlog restore FILE.", refused.Message);
    }

    [Fact]
    public void Names_a_fitting_a_taking_off_and_a_goal()
    {
        var (vehicle, axle) = (test.Vehicle("Brindle"), test.Axle("Haldor 4.10 axle"));
        test.Shop.Fit(axle, vehicle, Position.RearAxle, new(2026, 5, 3));
        test.Shop.TakeOff(axle, new(2026, 5, 4));
        test.Shop.Add(new BuildLog.Data.Goals.HillGoalEntry(vehicle) { Gradient = "6 %", Speed = "80 km/h" });
        Assert.Equal(
            ["added hill goal 6 % at 80 km/h of Brindle", "took Haldor 4.10 axle off Brindle", "fitted Haldor 4.10 axle to Brindle", "added axle Haldor 4.10 axle", "added vehicle Brindle"],
            test.Shop.Changes().Select(change => change.Label));
    }

    [Fact]
    public void Reads_a_position_as_the_trade_says_it()
    {
        test.Shop.Fit(test.Axle("Haldor 4.10 axle"), test.Vehicle("Brindle"), Position.RearAxle, new(2026, 5, 3));

        Assert.Contains(test.Shop.Changes()[0].Fields, field => field is { Field: "position", After: "rear axle" });
    }

    [Fact]
    public void Tells_the_history_of_one_record_also_when_it_is_gone()
    {
        var (one, other) = (test.Vehicle("Brindle"), test.Vehicle("Tansy"));
        one = test.Shop.Change(one, v => v.Owner = "Agnes");
        test.Shop.Remove(one);
        Assert.Equal(["removed vehicle Brindle", "changed vehicle Brindle", "added vehicle Brindle"], test.ChangesOf(one).Select(change => change.Label));
        Assert.Equal("added vehicle Tansy", Assert.Single(test.ChangesOf(other)).Label);
    }

    [Fact]
    public void Of_a_vehicle_holds_its_parts_and_comes_page_by_page()
    {
        var (vehicle, axle) = (test.Vehicle("Brindle"), test.Axle("Harrow axle"));
        test.Vehicle("Tansy");
        test.Axle("on the shelf");
        test.Shop.Fit(axle, vehicle, Position.RearAxle, new(2026, 5, 3));
        var first = test.Shop.Changes(vehicle, most: 2);
        Assert.Equal(["fitted Harrow axle to Brindle", "added axle Harrow axle"], first.Select(change => change.Label));
        Assert.Equal("added vehicle Brindle", Assert.Single(test.Shop.Changes(vehicle, before: first[^1], most: 2)).Label);
        Assert.Equal(5, test.Shop.Changes().Count);
    }

    [Theory]
    [InlineData("UPDATE ChangeSets SET Label = 'nothing happened'")]
    [InlineData("DELETE FROM ChangeSets")]
    [InlineData("UPDATE Changes SET Diff = '{}'")]
    [InlineData("DELETE FROM Changes")]
    public void Is_only_ever_added_to(string sql)
    {
        test.Vehicle("Brindle");
        var refused = Assert.Throws<SqliteException>(() => test.Ask(sql));
        Assert.Contains("only ever added to", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Holds_nothing_of_a_change_that_was_refused()
    {
        test.Vehicle("Brindle");
        Assert.Throws<RefusedException>(() => test.Vehicle("Brindle"));
        Assert.Single(test.Shop.Changes());
    }

    // The second route: every row of every table, added up from the log, is the row in the file.
    [Fact]
    public void Accounts_for_every_row_of_every_table()
    {
        DemoShop.Fill(test.Shop);
        var vehicle = test.Shop.FindVehicle("Quillon");
        test.Shop.Change(vehicle, v => v.Notes = "changed");
        test.Shop.Remove(test.Shop.FindVehicle("Tansy"), withEverything: true);
        test.Shop.Undo();
        using var db = new ShopContext(ShopContext.OptionsFor(test.Path));
        var tables = Logged(db).Select(type => type.GetTableName()!).Distinct().ToList();
        Assert.All(tables, table => Assert.Equal(
            test.Ask($"SELECT count(*) FROM \"{table}\""),
            test.Ask($"SELECT coalesce(sum(CASE Op WHEN 'Insert' THEN 1 WHEN 'Delete' THEN -1 ELSE 0 END), 0) FROM Changes WHERE TableName = '{table}'")));
    }

    /// <summary>A new kind of record or row cannot escape: whatever the model holds is logged when it changes, and refers to what it is part of.</summary>
    [Fact]
    public void Misses_no_kind_of_row()
    {
        using var db = new ShopContext(ShopContext.OptionsFor(test.Path));
        Assert.All(Logged(db), type =>
        {
            Assert.Equal("Id", Assert.Single(type.FindPrimaryKey()!.Properties).GetColumnName());
            Assert.True(
                typeof(Kept).IsAssignableFrom(type.ClrType) || type.GetForeignKeys().Any(key => typeof(Kept).IsAssignableFrom(key.PrincipalEntityType.ClrType)),
                $"{type.ClrType.Name} is part of no record");
            Assert.All(type.GetForeignKeys(), key => Assert.NotNull(key.Properties[0].PropertyInfo));
        });
        var stored = test.Ask("SELECT group_concat(DISTINCT c.type) FROM sqlite_master t JOIN pragma_table_info(t.name) c WHERE t.type = 'table' AND t.name NOT LIKE 'FindableTe%' AND t.name NOT LIKE 'sqlite%'");
        Assert.Equal(["INTEGER", "REAL", "TEXT"], $"{stored}".Split(',').Order(StringComparer.Ordinal));
    }

    private static List<Microsoft.EntityFrameworkCore.Metadata.IEntityType> Logged(ShopContext db)
        => [.. db.Model.GetEntityTypes().Where(type => type.GetTableName() is not ("ChangeSets" or "Changes" or "Findables"))];

    private sealed class StoppedClock(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now;
    }
}
