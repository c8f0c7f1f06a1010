using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace BuildLog.Data.Files;

/// <summary>Lets SQLite itself wait for another writer, from a millisecond upwards.</summary>
/// <remarks>The driver looks again every 150 ms only: beside a program that writes without a pause it can miss every gap.</remarks>
internal sealed class FineWaiting : DbConnectionInterceptor
{
    public static readonly FineWaiting Instance = new();

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
        => ((SqliteConnection)connection).Run(FormattableString.Invariant($"PRAGMA busy_timeout = {ShopConnection.LongestWait * 1000}"));
}
