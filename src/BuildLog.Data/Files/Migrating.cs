using BuildLog.Data.Search;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace BuildLog.Data.Files;

/// <summary>Creates the record or brings an older one up to date. Whoever calls holds the <see cref="MigrationLock"/>.</summary>
internal static class Migrating
{
    private const string Fresh = ".new";

    /// <summary>Makes the file beside its place and moves it there when it is whole: a power cut leaves no half-made record.</summary>
    public static void Create(string path)
    {
        var fresh = path + Fresh;
        DeleteWithLog(fresh);
        OwnerOnly.OpenFile(fresh).Dispose();
        Migrate(fresh);
        FinishedName.Give(fresh, path, overwrite: false);
    }

    /// <summary>Brings a copy up to date, which then takes the record's place: a migration that is cut off anywhere leaves the older record, and the next start begins anew.</summary>
    public static void BringUpToDate(string path)
    {
        var fresh = path + Fresh;
        try
        {
            using (var held = SoleUse.Take(path))
            {
                DeleteWithLog(fresh);
                OwnerOnly.OpenFile(fresh).Dispose();
                File.Copy(Backup.BeforeMigration(held.Connection, path), fresh, overwrite: true);
                Migrate(fresh);
            }

            FinishedName.Give(fresh, path);
        }
        finally
        {
            DeleteWithLog(fresh);
        }
    }

    /// <summary>Brings a file up to date that nobody else uses.</summary>
    public static void Migrate(string path)
    {
        // A program killed during a migration leaves its lock row behind, and every later one would wait for it for ever. We hold our own lock.
        using (var connection = ShopConnection.OpenAlone(path)) connection.Run("DROP TABLE IF EXISTS \"__EFMigrationsLock\"");
        using (var db = new ShopContext(Options(path))) db.Database.Migrate();
        Finish(path);
    }

    /// <summary>Gives a file of today's schema what no migration holds.</summary>
    public static void Finish(string path)
    {
        // A table that a migration rebuilds loses its triggers without a word, so they are made anew each time.
        using var connection = ShopConnection.OpenAlone(path);
        connection.Run(FormattableString.Invariant($"PRAGMA application_id = {OpeningCheck.ApplicationId}"));
        connection.Run(Triggers.Script);
        FillSearch(path);

        // Last, for this is what the next start knows a finished file by.
        connection.Run("PRAGMA journal_mode = WAL");
        connection.Run("PRAGMA wal_checkpoint(TRUNCATE)");
    }

    private static void DeleteWithLog(string path)
    {
        foreach (var part in (string[])["", "-wal", "-shm", "-journal"]) File.Delete(path + part);
    }

    // An older file knew no search, and a table that was rebuilt may hold other texts than before.
    private static void FillSearch(string path)
    {
        using var db = new ShopContext(Options(path));
        using var whole = db.Database.BeginTransaction();
        new FindableIndex(db).Fill();
        whole.Commit();
    }

    // That the migrations are complete is held by a test; asking again here would build the model a second time.
    private static DbContextOptions<ShopContext> Options(string path)
        => new DbContextOptionsBuilder<ShopContext>(ShopContext.OptionsFor(path))
            .UseSqlite(ShopConnection.StringFor(path, pooled: false))
            .ConfigureWarnings(warnings => warnings.Ignore(RelationalEventId.PendingModelChangesWarning))
            .Options;
}
