using System.Globalization;
using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using Microsoft.Data.Sqlite;

namespace BuildLog.Data.Tests.Crashes;

/// <summary>A program that writes and says of each change when it is stored.</summary>
internal static class Writer
{
    public const string ByHand = "write-by-hand";
    public const string ThroughTheShop = "write-through-the-shop";

    public const string Opening = "open-the-record";

    /// <summary>Opens the record, which may have to be brought up to date first.</summary>
    public static int Open(string path)
    {
        Say("opening");
        ShopFile.Open(path).Dispose();
        Say("opened");
        return 0;
    }

    /// <summary>Writes until it is killed, with the record's own connection but without the mapper, which takes longer to load than a round lasts.</summary>
    public static int WriteByHand(string path)
    {
        using var connection = new SqliteConnection(ShopConnection.StringFor(path));
        connection.Open();

        // A log that is folded in often is also caught while it is folded in.
        connection.Run("PRAGMA wal_autocheckpoint = 20");
        for (var count = 1; ; count++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"{Environment.ProcessId}-{count}");
            using var transaction = connection.BeginTransaction();
            using var command = connection.CreateCommand();
            command.CommandText =
                """
                INSERT INTO Vehicles (Name, NameKey, State, Owner, ChassisNumber, Registration, DrivesInFront, OdometerUnit, Notes, Uid, Version)
                VALUES ($name, $name, 'Planned', '', '', '', 0, 'Miles', $notes, $name, 0);
                INSERT INTO Goals (VehicleId, Kind, Uid, Version, Limited, "Limit") VALUES (last_insert_rowid(), 'limit', $name, 0, 'Track', '1500 mm');
                """;
            command.Parameters.AddWithValue("$name", name);
            command.Parameters.AddWithValue("$notes", new string('n', 3000));
            command.ExecuteNonQuery();
            transaction.Commit();
            Say(name);
        }
    }

    public static int WriteThroughTheShop(string path, string name, string count)
    {
        using var shop = ShopFile.Open(path);
        for (var k = 1; k <= int.Parse(count, CultureInfo.InvariantCulture); k++)
            Say(shop.Add(new Vehicle { Name = string.Create(CultureInfo.InvariantCulture, $"{name}-{k}") }).Name);
        return 0;
    }

    private static void Say(string stored)
    {
        Console.Out.WriteLine(stored);
        Console.Out.Flush();
    }
}
