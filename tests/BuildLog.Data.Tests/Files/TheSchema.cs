using BuildLog.Data.Files;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace BuildLog.Data.Tests.Files;

public sealed class TheSchema : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Has_no_change_without_a_migration()
    {
        using var db = new ShopContext(ShopContext.OptionsFor(test.Path));
        Assert.False(db.Database.HasPendingModelChanges());
    }

    [Fact]
    public void Is_checked_by_a_list_of_all_its_migrations()
    {
        using var db = new ShopContext(ShopContext.OptionsFor(test.Path));
        Assert.Equal(db.Database.GetMigrations(), KnownMigrations.Ids);
    }

    [Fact]
    public void Is_kept_as_a_file_of_every_step_but_the_last()
        => Assert.All(KnownMigrations.Ids.SkipLast(1), id => Assert.True(File.Exists(Path.Combine(AppContext.BaseDirectory, "Files", id.Split('_')[1] + ".sql")), id));

    [Fact]
    public void Has_strict_tables_only()
    {
        var tables = Ask("SELECT name || ':' || strict FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND name NOT LIKE 'sqlite%' ORDER BY name");
        string[] expected =
        [
            "Attachments", "ChangeSets", "Changes", "Components", "Costs", "Deadlines", "Decisions", "DonorPieces", "Donors", "Findables", "Fitments", "Gears", "Goals", "IdentityNumbers", "Jobs",
            "Notes", "OdometerChanges", "Offers", "OutsideWorks", "PlannedChanges", "PlannedWishes", "Plans", "Readings", "Retorques", "RoadTests", "Sessions", "ShaftPieces",
            "Specs", "Suppliers", "Traits", "Vehicles", "WantedMustHaves", "WantedParts", "WantedWindows", "WorkEntries", "Workshops",
        ];
        Assert.Equal(expected.Select(table => table + ":1"), tables.Where(table => !table.StartsWith("__EF", StringComparison.Ordinal)));
    }

    [Fact]
    public void Keeps_its_triggers()
        => Assert.Equal(
            [
                "ChangeSets_DELETE_Never", "ChangeSets_UPDATE_Never", "Changes_DELETE_Never", "Changes_UPDATE_Never",
                "Findables_Delete_Text", "Findables_Insert_Text", "Findables_Update_Text",
                "Fitments_Insert_NoOverlap", "Fitments_Update_NoOverlap",
            ],
            Ask("SELECT name FROM sqlite_master WHERE type = 'trigger' ORDER BY name"));

    [Fact]
    public void Never_lets_sqlite_delete_what_hangs_on_something_else()
    {
        var actions = Ask("SELECT DISTINCT f.on_delete FROM sqlite_master t JOIN pragma_foreign_key_list(t.name) f WHERE t.type = 'table'");
        Assert.All(actions, action => Assert.Contains(action, (string[])["RESTRICT", "NO ACTION"]));
        Assert.NotEmpty(actions);
    }

    [Theory]
    [InlineData("INSERT INTO Vehicles (Name, NameKey, State, Owner, ChassisNumber, Registration, DrivesInFront, OdometerUnit, Notes, Uid, Version) VALUES (' ', 'X', 'Planned', '', '', '', 0, 'Miles', '', 'u1', 0)")]
    [InlineData("INSERT INTO Vehicles (Name, NameKey, State, Owner, ChassisNumber, Registration, DrivesInFront, OdometerUnit, Notes, Uid, Version) VALUES ('X', 'X', 'Sold', '', '', '', 0, 'Miles', '', 'u1', 0)")]
    [InlineData("INSERT INTO Components (Name, SerialNumber, Donor, Shelf, Notes, Kind, Uid, Version, Ring) VALUES ('A', '', '', '', '', 'axle', 'u1', 0, 41)")]
    [InlineData("INSERT INTO Components (Name, SerialNumber, Donor, Shelf, Notes, Kind, Uid, Version, StatedRatioSi, StatedRatioUnit, StatedRatioText, StatedRatioSource) VALUES ('A', '', '', '', '', 'axle', 'u1', 0, 47.7, '', '47.7', 'Tag')")]
    [InlineData("INSERT INTO Components (Name, SerialNumber, Donor, Shelf, Notes, Kind, Uid, Version, StatedRatioSi) VALUES ('A', '', '', '', '', 'axle', 'u1', 0, 4.1)")]
    [InlineData("INSERT INTO Sessions (Date, Helper, Conditions, Notes, ComponentId, Method, Uid, Version) VALUES ('2026-02-30', '', '', '', 1, 'turn count', 'u1', 0)")]
    [InlineData("INSERT INTO Components (Name, SerialNumber, Donor, Shelf, Notes, Kind, Uid, Version) VALUES ('A', '', '', '', '', 'propeller', 'u1', 0)")]
    [InlineData("INSERT INTO Components (Name, SerialNumber, Donor, Shelf, Notes, Kind, Uid, Version, Studs) VALUES ('A', '', '', '', '', 'axle', 'u1', 0, 2)")]
    [InlineData("INSERT INTO Components (Name, SerialNumber, Donor, Shelf, Notes, Kind, Uid, Version, FrontDrive) VALUES ('A', '', '', '', '', 'transfer case', 'u1', 0, 'sometimes')")]
    [InlineData("INSERT INTO Specs (ComponentId, VehicleId, Spec, NumberSi, NumberUnit, NumberText, NumberSource) VALUES (1, 1, 'Mass', 1500, 'kg', '1500 kg', 'Measured')")]
    [InlineData("INSERT INTO Specs (Spec, NumberSi, NumberUnit, NumberText, NumberSource) VALUES ('Mass', 1500, 'kg', '1500 kg', 'Measured')")]
    [InlineData("INSERT INTO Specs (VehicleId, Spec, NumberSi, NumberUnit, NumberText, NumberSource) VALUES (1, 'Mass', 15, 'kg', '15 kg', 'Measured')")]
    [InlineData("INSERT INTO Specs (VehicleId, Spec, NumberSi, NumberUnit, NumberText, NumberSource) VALUES (1, 'Weight', 1500, 'kg', '1500 kg', 'Measured')")]
    [InlineData("INSERT INTO Specs (VehicleId, Spec, NumberSi, NumberUnit, NumberText, NumberSource) VALUES (1, 'Mass', 1500, 'kg', '1500 kg', 'guessed')")]
    [InlineData("INSERT INTO Traits (ComponentId, Trait, Text) VALUES (1, 'Colour', 'red')")]
    [InlineData("INSERT INTO Traits (ComponentId, Trait, Text) VALUES (1, 'BellHousing', ' ')")]
    [InlineData("INSERT INTO Traits (ComponentId, Trait, Text) VALUES (1, 'Turns', 'both ways')")]
    [InlineData("INSERT INTO Sessions (Date, Helper, Conditions, Notes, ComponentId, Method, Uid, Version, ReadTo, Align) VALUES ('2026-02-01', '', '', '', 1, 'gear count', 'u1', 0, '0.25', '0.02')")]
    [InlineData("INSERT INTO Sessions (Date, Helper, Conditions, Notes, ComponentId, VehicleId, Method, Uid, Version, Step) VALUES ('2026-02-01', '', '', '', 1, 1, 'weighbridge', 'u1', 0, '20 kg')")]
    [InlineData("INSERT INTO Sessions (Date, Helper, Conditions, Notes, Method, Uid, Version, Step) VALUES ('2026-02-01', '', '', '', 'weighbridge', 'u1', 0, '20 kg')")]
    [InlineData("INSERT INTO Sessions (Date, Helper, Conditions, Notes, VehicleId, Method, Uid, Version) VALUES ('2026-02-01', '', '', '', 1, 'teeth', 'u1', 0)")]
    [InlineData("INSERT INTO Sessions (Date, Helper, Conditions, Notes, ComponentId, Method, Uid, Version, Tape, \"Between\") VALUES ('2026-02-01', '', '', '', 1, 'bolt circle', 'u1', 0, '1 mm', 'Across')")]
    [InlineData("INSERT INTO PlannedWishes (PlanId, Wish, Typed) VALUES (1, 'Colour', 'red')")]
    [InlineData("INSERT INTO ShaftPieces (PropshaftId, Ordinal) VALUES (1, 4)")]
    [InlineData("INSERT INTO ShaftPieces (PropshaftId, Ordinal, OuterSi) VALUES (1, 1, 0.076)")]
    [InlineData("INSERT INTO Goals (VehicleId, Kind, Uid, Version, Limited) VALUES (1, 'limit', 'u1', 0, 'Track')")]
    [InlineData("INSERT INTO Goals (VehicleId, Kind, Uid, Version, Limited, \"Limit\") VALUES (1, 'limit', 'u1', 0, 'Noise', '80')")]
    [InlineData("INSERT INTO Fitments (ComponentId, VehicleId, Position, FromDate, FromOrder, Reason, ReasonOff, Uid, Version, FromAsTypedText, FromAsTypedEarliest, FromAsTypedLatest) VALUES (1, 1, 'Engine', '2024-06-01', 1, '', '', 'u1', 0, 'spring 2024', '2024-03-01', '2024-05-31')")]
    [InlineData("INSERT INTO Fitments (ComponentId, VehicleId, Position, FromDate, FromOrder, Reason, ReasonOff, Uid, Version, ToAsTypedText) VALUES (1, 1, 'Engine', '2024-06-01', 1, '', '', 'u1', 0, 'spring 2024')")]
    [InlineData("INSERT INTO Fitments (ComponentId, VehicleId, Position, FromDate, FromOrder, Reason, ReasonOff, Uid, Version) VALUES (1, 1, 'Roof', '2026-01-01', 1, '', '', 'u1', 0)")]
    public void Refuses_nonsense_whoever_writes_it(string sql)
    {
        var refused = Assert.Throws<Microsoft.Data.Sqlite.SqliteException>(() => test.Ask(sql));
        Assert.Equal(275, refused.SqliteExtendedErrorCode);
    }

    private List<string> Ask(string sql)
    {
        using var connection = ShopConnection.OpenAlone(test.Path);
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // The test's own text.
        command.CommandText = sql;
#pragma warning restore CA2100
        using var row = command.ExecuteReader();
        var answers = new List<string>();
        while (row.Read()) answers.Add(row.GetString(0));
        return answers;
    }
}
