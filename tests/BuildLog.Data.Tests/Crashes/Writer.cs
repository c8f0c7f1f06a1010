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

    public const string Holding = "hold-the-record";
    public const string Changing = "change-the-owner";
    public const string Exporting = "export-the-record";
    public const string Importing = "import-a-record";

    /// <summary>Begins to write, says so, and takes its time.</summary>
    public static int Hold(string path, string seconds)
    {
        using var connection = new SqliteConnection(ShopConnection.StringFor(path));
        connection.Open();
        using var transaction = connection.BeginTransaction();
        Say("writing");
        Thread.Sleep(TimeSpan.FromSeconds(double.Parse(seconds, CultureInfo.InvariantCulture)));
        transaction.Commit();
        return 0;
    }

    public static int Change(string path, string name, string owner)
    {
        using var shop = ShopFile.Open(path);
        Say(shop.Change(shop.FindVehicle(name), vehicle => vehicle.Owner = owner).Owner);
        return 0;
    }

    public static int Export(string path, string zip)
    {
        using var shop = ShopFile.Open(path);
        Say(FormattableString.Invariant($"{shop.Export(zip).Entries.Values.Sum()}"));
        return 0;
    }

    public static int Import(string path, string zip)
    {
        using var shop = ShopFile.Open(path);
        Say(FormattableString.Invariant($"{shop.Import(zip).Added.Values.Sum()}"));
        return 0;
    }

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
            Say(Stubbornly(() => shop.Add(new Vehicle { Name = string.Create(CultureInfo.InvariantCulture, $"{name}-{k}") }).Name));
        return 0;
    }

    // A machine that is busy enough can keep a writer waiting for longer than a person should: he is told so, and tries once more.
    private static string Stubbornly(Func<string> write)
    {
        while (true)
        {
            try
            {
                return write();
            }
            catch (RecordException busy) when (busy.Fault == Fault.Busy)
            {
                Console.Error.WriteLine(busy.Message);
            }
        }
    }

    private static void Say(string stored)
    {
        Console.Out.WriteLine(stored);
        Console.Out.Flush();
    }
}
