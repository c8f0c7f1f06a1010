using System.Diagnostics;
using BuildLog.Data.Files;
using BuildLog.Data.Rows;
using BuildLog.Gearing.Quantities;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace BuildLog.Data;

/// <summary>Runs one reading or one change on the file, and turns its troubles into sentences.</summary>
/// <param name="path">Where the record lies.</param>
/// <param name="presence">The pool lets go of idle connections; this one stays, so that a restore notices a workbench that nobody has touched for an hour.</param>
/// <param name="clock">Tells when a change was made.</param>
internal sealed class ShopStore(string path, PlainConnection presence, TimeProvider clock)
{
    // Those that nobody is reading with just now. The first is there already: most commands need no other, and opening one costs as much as a list.
    private readonly Stack<RowReader> readers = new([new(presence, isKept: true)]);

    private bool wasNotWritable; // at the last change

    private ShopWriters? writers;
    private DbContextOptions<ShopContext>? options;

    public string Path => path;

    /// <summary>Asked whether a change goes on waiting for another program.</summary>
    public Func<OtherWriter, bool>? GoesOnWaiting { get; set; }

    private DbContextOptions<ShopContext> Options => options ??= ShopContext.OptionsFor(path);

    private ShopWriters Writers => LazyInitializer.EnsureInitialized(ref writers, () => new(Options));

    /// <summary>Reads by hand, so that the object mapper need not be loaded.</summary>
    public T Look<T>(Func<Snapshot, T> look) => Guard(() =>
    {
        RowReader? reader;
        lock (readers) readers.TryPop(out reader);
        reader ??= new(PlainConnection.Open(path));
        try
        {
            var result = reader.FromOneState(look);
            lock (readers) readers.Push(reader);
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

    /// <summary>Why nothing can be stored, as far as opening it has shown; null where nothing speaks against it.</summary>
    public string? NotWritable => presence.MayWrite ? null : FileTroubles.NotWritable(path);

    public T Write<T>(Func<ShopContext, T> write) => Write(write, keep: true);

    /// <summary>Stores a new record by hand.</summary>
    public T Enter<T>(T entry)
        where T : Entered
    {
        try
        {
            return Change(db => Entries.Enter(db, entry), keep: true);
        }
        catch
        {
            // It is not stored, whatever number it had.
            entry.Id = 0;
            throw;
        }
    }

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
        lock (readers)
        {
            while (readers.TryPop(out var reader)) reader.Dispose();
        }

        presence.Dispose();
        writers?.Close();
        if (options is not null) ClearPool(); // else the object mapper, whose connections are pooled, was never asked
    }

    private void ClearPool()
    {
        using var connection = new SqliteConnection(ShopConnection.StringFor(path));
        SqliteConnection.ClearPool(connection);
    }

    // What was opened while nothing could be written stays so, and what was opened as unchanging would not see a change: before the next try all is let go of.
    private void OpenAfresh()
    {
        ClearPool();
        lock (readers)
        {
            if (readers.FirstOrDefault(reader => reader.IsKept) is not { } first) return; // somebody is reading with it: next time
            while (readers.TryPop(out var reader)) reader.Dispose();
            presence.OpenAfresh(path);
            readers.Push(first);
            wasNotWritable = false;
        }
    }

    /// <remarks>The transaction takes the write lock at once, so that what a rule has looked at still holds when the change is stored.</remarks>
    private T Write<T>(Func<ShopContext, T> write, bool keep) => Change(
        db =>
        {
            var result = write(db);
            db.SaveChanges();
            return result;
        },
        keep);

    private T Change<T>(Func<ShopContext, T> change, bool keep) => Guard(() =>
    {
        if (wasNotWritable || presence.IsOfUnchanging) OpenAfresh();
        var db = Writers.Take();
        try
        {
            T result;
            using (var transaction = Begin(db))
            {
                result = change(db);
                if (keep)
                {
                    db.Journal.Store(clock);
                    transaction.Commit();
                }
            }

            Writers.Keep(db);
            return result;
        }
        catch (Exception trouble)
        {
            db.Dispose();
            if (FileTroubles.Explain(trouble, path) is { Fault: Fault.NotWritable }) wasNotWritable = true;
            throw;
        }
    });

    // Nothing of the change has been done yet, so it can be begun again as often as somebody is willing to wait.
    private IDbContextTransaction Begin(ShopContext db)
    {
        var waiting = Stopwatch.StartNew();
        while (true)
        {
            try
            {
                return db.Database.BeginTransaction();
            }
            catch (SqliteException busy) when (busy.SqliteErrorCode == 5 && GoesOnWaiting?.Invoke(new(path, waiting.Elapsed)) == true)
            {
                // Whoever was asked has said that he waits.
            }
        }
    }

    // What comes of an unsound file may look like a mistake of this program; it is put down to the file if that fails its check.
    private bool IsOfDamage(Exception trouble) => trouble switch
    {
        RefusedException or OperationCanceledException or SqliteException => false,
        FormatException => true, // an identifier, a word or a column that is none
        _ => FileTroubles.Explain(trouble, path) is null && RecordCheck.FindsDamage(path),
    };
}
