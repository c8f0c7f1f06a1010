using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data;

/// <summary>Connections for changes, each kept with what was prepared on it for the next change.</summary>
/// <remarks>Apart from <see cref="ShopStore"/>, so that whoever only reads need not load the object mapper.</remarks>
internal sealed class ShopWriters(DbContextOptions<ShopContext> options)
{
    // Those that nobody is writing with just now.
    private readonly ConcurrentBag<ShopContext> idle = [];

    public ShopContext Take() => idle.TryTake(out var writer) ? writer : Open();

    /// <summary>For the next change.</summary>
    public void Keep(ShopContext writer)
    {
        writer.StartAnew();
        idle.Add(writer);
    }

    public void Close()
    {
        while (idle.TryTake(out var writer)) writer.Dispose();
    }

    private ShopContext Open()
    {
        var writer = new ShopContext(options);
        try
        {
            writer.Database.OpenConnection();
            return writer;
        }
        catch
        {
            writer.Dispose();
            throw;
        }
    }
}
