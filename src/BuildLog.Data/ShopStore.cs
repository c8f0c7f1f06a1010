using BuildLog.Data.Files;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data;

/// <summary>Runs one reading or one change on the file, and turns its troubles into sentences.</summary>
internal sealed class ShopStore(string path, TimeProvider clock)
{
    private readonly Lazy<DbContextOptions<ShopContext>> options = new(() => ShopContext.OptionsFor(path));

    public string Path => path;

    public T Read<T>(Func<ShopContext, T> read) => Guard(() =>
    {
        using var db = new ShopContext(options.Value);
        db.ChangeTracker.QueryTrackingBehavior = QueryTrackingBehavior.NoTrackingWithIdentityResolution;
        return read(db);
    });

    /// <remarks>The transaction takes the write lock at once, so that what a rule has looked at still holds when the change is stored.</remarks>
    public T Write<T>(Func<ShopContext, T> write) => Guard(() =>
    {
        using var db = new ShopContext(options.Value);
        using var transaction = db.Database.BeginTransaction();
        var result = write(db);
        db.SaveChanges();
        db.Journal.Store(clock);
        transaction.Commit();
        return result;
    });

    public void Write(Action<ShopContext> write) => Write(db =>
    {
        write(db);
        return true;
    });

    public T Guard<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception trouble) when (FileTroubles.Explain(trouble, path) is { } explained)
        {
            throw explained;
        }
    }

    public void Close()
    {
        using var connection = new SqliteConnection(ShopConnection.StringFor(path));
        SqliteConnection.ClearPool(connection);
    }
}
