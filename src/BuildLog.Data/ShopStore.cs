using System.Collections.Concurrent;
using BuildLog.Data.Files;
using BuildLog.Data.Rows;
using BuildLog.Gearing.Quantities;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data;

/// <summary>Runs one reading or one change on the file, and turns its troubles into sentences.</summary>
internal sealed class ShopStore(string path, TimeProvider clock)
{
    // The pool lets go of idle connections; this one stays, so that a restore notices a workbench that nobody has touched for an hour.
    private readonly SqliteConnection presence = ShopConnection.OpenForReading(path);

    // Those that nobody is reading with just now.
    private readonly ConcurrentBag<RowReader> readers = [];

    private DbContextOptions<ShopContext>? options;

    public string Path => path;

    private DbContextOptions<ShopContext> Options => options ??= ShopContext.OptionsFor(path);

    /// <summary>Reads by hand, so that the object mapper need not be loaded.</summary>
    public T Look<T>(Func<Snapshot, T> look) => Guard(() =>
    {
        if (!readers.TryTake(out var reader)) reader = new(path);
        try
        {
            var result = reader.FromOneState(look);
            readers.Add(reader);
            return result;
        }
        catch
        {
            reader.Dispose();
            throw;
        }
    });

    public T Read<T>(Func<ShopContext, T> read) => Guard(() =>
    {
        using var db = new ShopContext(Options);
        db.ChangeTracker.QueryTrackingBehavior = QueryTrackingBehavior.NoTrackingWithIdentityResolution;
        return read(db);
    });

    public T Write<T>(Func<ShopContext, T> write) => Write(write, keep: true);

    /// <summary>Does what <see cref="Write{T}(Func{ShopContext, T})"/> would, and takes it back.</summary>
    public T Try<T>(Func<ShopContext, T> write) => Write(write, keep: false);

    public void Write(Action<ShopContext> write) => Write(db =>
    {
        write(db);
        return true;
    });

    public T Guard<T>(Func<T> work) => FileTroubles.Guard(path, work, trouble => IsOfDamage(trouble) ? FileTroubles.Damaged(path, trouble) : null);

    public void Close()
    {
        presence.Dispose();
        while (readers.TryTake(out var reader)) reader.Dispose();
        using var connection = new SqliteConnection(ShopConnection.StringFor(path));
        SqliteConnection.ClearPool(connection);
    }

    /// <remarks>The transaction takes the write lock at once, so that what a rule has looked at still holds when the change is stored.</remarks>
    private T Write<T>(Func<ShopContext, T> write, bool keep) => Guard(() =>
    {
        using var db = new ShopContext(Options);
        using var transaction = db.Database.BeginTransaction();
        var result = write(db);
        db.SaveChanges();
        if (!keep) return result;

        db.Journal.Store(clock);
        transaction.Commit();
        return result;
    });

    // What comes of an unsound file may look like a mistake of this program; it is put down to the file if that fails its check.
    private bool IsOfDamage(Exception trouble) => trouble switch
    {
        RefusedException or OperationCanceledException or SqliteException => false,
        FormatException => true, // an identifier, a word or a column that is none
        _ => FileTroubles.Explain(trouble, path) is null && RecordCheck.FindsDamage(path),
    };
}
