using BuildLog.Data.Files;
using Xunit;

namespace BuildLog.Data.Tests.Files;

public sealed class TheDaysBackup : IDisposable
{
    private static readonly DateOnly Day = new(2026, 5, 3);

    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Is_a_copy_of_that_day_in_a_folder_beside_the_record()
    {
        test.Vehicle("Brindle");
        Assert.Equal(Copy("shop.2026-05-03.db"), Backup.OfTheDay(test.Path, Day));
        using var shop = ShopFile.Open(Copy("shop.2026-05-03.db"));
        Assert.Equal("Brindle", Assert.Single(shop.Vehicles()).Name);
    }

    [Fact]
    public void Is_taken_once_and_holds_the_day_as_it_began()
    {
        test.Vehicle("Brindle");
        Backup.OfTheDay(test.Path, Day);
        test.Vehicle("Tansy");
        Assert.Null(Backup.OfTheDay(test.Path, Day));
        using var copy = ShopConnection.OpenAlone(Copy("shop.2026-05-03.db"), readOnly: true);
        Assert.Equal(1L, copy.Ask("SELECT count(*) FROM Vehicles"));
    }

    [Fact]
    public void Is_not_taken_of_a_record_that_holds_nothing()
    {
        Assert.Null(Backup.OfTheDay(test.Path, Day));
        Assert.False(Directory.Exists(Path.Combine(test.Folder, "backups")));
    }

    [Fact]
    public void Can_be_read_by_its_owner_only()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("The user's data folder guards it there.");
            return;
        }

        test.Vehicle("Brindle");
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Backup.OfTheDay(test.Path, Day)!));
    }

    [Fact]
    public void Pushes_out_the_oldest_but_leaves_alone_what_is_not_of_its_kind()
    {
        test.Vehicle("Brindle");
        Directory.CreateDirectory(Path.Combine(test.Folder, "backups"));
        string[] others = ["shop.before-migration.20200101T000000000Z.db", "shop.before-restore.20200101T000000000Z.db", "other.2020-01-01.db", "shop.2020-13-01.db", "shop.txt"];
        foreach (var other in others) File.WriteAllText(Copy(other), "");
        for (var k = 100; k >= 0; k--) File.WriteAllText(Copy($"shop.{Day.AddDays(-1 - k):yyyy-MM-dd}.db"), "");
        File.WriteAllText(Copy("shop.2026-01-01.db.0123.tmp"), "");
        File.SetLastWriteTimeUtc(Copy("shop.2026-01-01.db.0123.tmp"), DateTime.UtcNow.AddDays(-2));

        Backup.OfTheDay(test.Path, Day);

        // By the calendar: Sunday 3 May 2026 and the six days before it; then the Sundays before 27 April.
        string[] days = ["05-03", "05-02", "05-01", "04-30", "04-29", "04-28", "04-27"];
        string[] weeks = ["04-26", "04-19", "04-12", "04-05", "03-29", "03-22", "03-15", "03-08"];
        var expected = days.Concat(weeks).Select(day => $"shop.2026-{day}.db").Concat(others).Order(StringComparer.Ordinal);
        Assert.Equal(expected, Directory.GetFiles(Path.Combine(test.Folder, "backups")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    // Two routes to one state: a year of starts on working days leaves the last day of each of eight weeks before the newest seven.
    [Fact]
    public void Leaves_after_a_year_of_starts_seven_days_and_eight_weeks()
    {
        IReadOnlyList<DateOnly> kept = [];
        for (var day = Day.AddDays(-365); day <= Day; day = day.AddDays(1))
        {
            if (day.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday)) kept = BackupFolder.Kept([.. kept, day]);
        }

        // Friday 1 May back to Thursday 23 April, then Wednesday 22 April of that same week and the Fridays before it.
        DateOnly[] expected =
        [
            new(2026, 5, 1), new(2026, 4, 30), new(2026, 4, 29), new(2026, 4, 28), new(2026, 4, 27), new(2026, 4, 24), new(2026, 4, 23),
            new(2026, 4, 22), new(2026, 4, 17), new(2026, 4, 10), new(2026, 4, 3), new(2026, 3, 27), new(2026, 3, 20), new(2026, 3, 13), new(2026, 3, 6),
        ];
        Assert.Equal(expected, kept);
    }

    [Fact]
    public void Is_no_copy_of_a_damaged_record_and_leaves_nothing_half_made()
    {
        test.Vehicle("Brindle");
        test.Shop.Dispose();
        Damage.LastPagesOf(test.Path);
        Assert.Equal(Fault.Damaged, Assert.Throws<RecordException>(() => Backup.OfTheDay(test.Path, Day)).Fault);
        Assert.Empty(Directory.GetFiles(test.Folder, "shop.2026*", SearchOption.AllDirectories));
    }

    [Fact]
    public void Says_why_it_could_not_be_made()
    {
        test.Vehicle("Brindle");
        File.WriteAllText(Path.Combine(test.Folder, "backups"), "a file where the folder should be");
        var refused = Assert.Throws<RecordException>(() => Backup.OfTheDay(test.Path, Day));
        Assert.Contains(Path.Combine(test.Folder, "backups"), refused.Message, StringComparison.Ordinal);
    }

    private string Copy(string name) => Path.Combine(test.Folder, "backups", name);
}
