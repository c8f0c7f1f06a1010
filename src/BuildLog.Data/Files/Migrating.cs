using BuildLog.Data.Search;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace BuildLog.Data.Files;

/// <summary>Creates the record or brings an older one up to date. Whoever calls holds the <see cref="MigrationLock"/>.</summary>
internal static class Migrating
{
    /// <summary>Makes the file beside its place and moves it there when it is whole: a power cut leaves no half-made record.</summary>
    public static void Create(string path)
    {
        var unfinished = path + ".new";
        File.Delete(unfinished);
        OwnerOnly.OpenFile(unfinished).Dispose();
        Migrate(unfinished);
        File.Move(unfinished, path);
    }

    /// <summary>Takes a copy first: rebuilding a table cannot be rolled back.</summary>
    public static void BringUpToDate(string path)
    {
        Backup.BeforeMigration(path);
        Migrate(path);
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
        connection.Run("PRAGMA journal_mode = WAL");
        connection.Run(FormattableString.Invariant($"PRAGMA application_id = {OpeningCheck.ApplicationId}"));
        connection.Run(Triggers.Script);
        FillSearch(path);
        connection.Run("PRAGMA wal_checkpoint(TRUNCATE)");
    }

    // An older file knew no search, and a table that was rebuilt may hold other texts than before.
    private static void FillSearch(string path)
    {
        using var db = new ShopContext(Options(path));
        using var whole = db.Database.BeginTransaction();
        new FindableIndex(db, new(db)).Fill();
        whole.Commit();
    }

    // That the migrations are complete is held by a test; asking again here would build the model a second time.
    private static DbContextOptions<ShopContext> Options(string path)
        => new DbContextOptionsBuilder<ShopContext>(ShopContext.OptionsFor(path))
            .UseSqlite(ShopConnection.StringFor(path, pooled: false))
            .ConfigureWarnings(warnings => warnings.Ignore(RelationalEventId.PendingModelChangesWarning))
            .Options;
}
