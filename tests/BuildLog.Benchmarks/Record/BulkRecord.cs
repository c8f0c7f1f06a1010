using System.Globalization;
using Bogus;
using BuildLog.Data.Files;
using Microsoft.Data.Sqlite;

namespace BuildLog.Benchmarks.Record;

/// <summary>A migrated record with as many fitments and as many readings as asked for: a hundred axles after each other on every vehicle.</summary>
/// <remarks>
/// Filled by SQL, as entering a million by hand takes hours; the rules of the tables hold, the triggers are put back after the rows. What people would have
/// typed is drawn from a few thousand invented sentences, the same for the same seed.
/// </remarks>
internal sealed class BulkRecord : IDisposable
{
    private const int AxlesOfEach = 100;
    private const int Sentences = 5000;

    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-bulk-").FullName;

    /// <param name="fitments">How many fitments, and as many readings.</param>
    /// <param name="notes">How many notes besides.</param>
    public BulkRecord(int fitments, int notes = 0)
    {
        ShopFile.Open(Path).Dispose();
        using var connection = Open();
        var triggers = Column(connection, "SELECT sql FROM sqlite_master WHERE type = 'trigger'");
        foreach (var name in Column(connection, "SELECT name FROM sqlite_master WHERE type = 'trigger'")) Run(connection, $"DROP TRIGGER \"{name}\"");
        using (var whole = connection.BeginTransaction())
        {
            Say(connection);
            foreach (var sql in Rows) Run(connection, Sized(sql, fitments, notes));
            whole.Commit();
        }

        Run(connection, "INSERT INTO \"FindableText\" (\"FindableText\") VALUES ('rebuild')");
        foreach (var sql in triggers) Run(connection, sql);
        Run(connection, "PRAGMA optimize=0x10002; PRAGMA wal_checkpoint(TRUNCATE)");
    }

    public string Path => System.IO.Path.Combine(folder, "shop.db");

    /// <summary>A file that goes with the record.</summary>
    public string Beside(string name) => System.IO.Path.Combine(folder, name);

    public SqliteConnection Open()
    {
        var connection = new SqliteConnection($"Data Source={Path};Foreign Keys=True");
        connection.Open();
        return connection;
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    // A vehicle v has the axles 100 v … 100 v + 99, one a month; every fourth was counted, four readings a count.
    private static readonly string[] Rows =
    [
        """
        WITH RECURSIVE n(v) AS (SELECT 1 UNION ALL SELECT v + 1 FROM n WHERE v < $vehicles)
        INSERT INTO Vehicles (Id, Name, NameKey, State, Owner, ChassisNumber, Registration, DrivesInFront, OdometerUnit, Notes, Uid, Version)
        SELECT v, 'Project ' || v, 'PROJECT ' || v, 'InBuild', '', '', '', 0, 'Kilometres', '', printf('00000000-0000-7000-8000-1%011d', v), 0 FROM n
        """,
        """
        WITH RECURSIVE k(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM k WHERE i < 99)
        INSERT INTO Components (Id, Name, SerialNumber, Donor, Shelf, Notes, Kind, Uid, Version)
        SELECT 100 * v.Id + i, 'axle ' || v.Id || '.' || i, '', '', '', '', 'axle', printf('00000000-0000-7000-8000-2%011d', 100 * v.Id + i), 0 FROM Vehicles v, k
        """,
        """
        INSERT INTO Fitments (Id, ComponentId, VehicleId, Position, FromDate, FromOrder, ToDate, ToOrder, Reason, ReasonOff, Uid, Version)
        SELECT c.Id, c.Id, c.Id / 100, 'RearAxle', date('2010-01-01', (c.Id % 100) || ' months'), c.Id / 100,
            iif(c.Id % 100 = 99, NULL, date('2010-01-01', (c.Id % 100 + 1) || ' months')), iif(c.Id % 100 = 99, NULL, c.Id / 100), (SELECT Text FROM Said WHERE Id = c.Id * 31 % 5000), '', printf('00000000-0000-7000-8000-3%011d', c.Id), 0
        FROM Components c
        """,
        """
        INSERT INTO Sessions (Id, Date, Helper, Conditions, Notes, ComponentId, VehicleId, Method, Wheels, ReadTo, Align, Hub, Uid, Version)
        SELECT Id, date(FromDate, '1 day'), '', '', '', ComponentId, VehicleId, 'turn count', 'OneHeld', '0.25', '0.02', '1', printf('00000000-0000-7000-8000-4%011d', Id), 0 FROM Fitments WHERE Id % 4 = 3
        """,
        """
        WITH RECURSIVE o(r) AS (SELECT 1 UNION ALL SELECT r + 1 FROM o WHERE r < 4)
        INSERT INTO Readings (SessionId, Ordinal, Text) SELECT Id, r, '10:20.5' FROM Sessions, o
        """,
        """
        INSERT INTO Findables (RecordUid, Kind, VehicleId, ComponentId, Day, Title, About, Body)
        SELECT f.Uid, 'fitment', f.VehicleId, f.ComponentId, f.FromDate, 'as axle from ' || f.FromDate, 'Project ' || f.VehicleId || ' ' || c.Name, f.Reason FROM Fitments f JOIN Components c ON c.Id = f.ComponentId
        """,
        """
        WITH RECURSIVE n(i) AS (SELECT 1 WHERE $notes > 0 UNION ALL SELECT i + 1 FROM n WHERE i < $notes)
        INSERT INTO Notes (Id, About, AboutUid, Date, Title, Body, Uid, Version)
        SELECT i, 'Vehicle', printf('00000000-0000-7000-8000-1%011d', 1 + i % $vehicles), date('2010-01-01', (i % 5000) || ' days'), (SELECT substr(Text, 1, 20) FROM Said WHERE Id = i * 17 % 5000),
            (SELECT Text FROM Said WHERE Id = i * 7 % 5000) || ' ' || (SELECT Text FROM Said WHERE Id = i * 13 % 5000) || ' ' || (SELECT Text FROM Said WHERE Id = i / 5000), printf('00000000-0000-7000-8000-5%011d', i), 0 FROM n
        """,
        "INSERT INTO Findables (RecordUid, Kind, Day, Title, About, Body) SELECT Uid, 'note', Date, Title, '', Title || char(10) || Body FROM Notes",
    ];

    private static string Sized(string sql, int fitments, int notes)
        => sql.Replace("$vehicles", (fitments / AxlesOfEach).ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)
            .Replace("$notes", notes.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);

    private static void Say(SqliteConnection connection)
    {
        var faker = new Faker { Random = new Randomizer(20_260_503) };
        Run(connection, "CREATE TEMP TABLE Said (Id INTEGER PRIMARY KEY, Text TEXT)");
        using var command = Command(connection, "INSERT INTO Said VALUES ($id, $text)");
        for (var k = 0; k < Sentences; k++)
        {
            command.Parameters.Clear();
            command.Parameters.AddWithValue("$id", k);
            command.Parameters.AddWithValue("$text", faker.Lorem.Sentence(wordCount: 8, range: 8));
            command.ExecuteNonQuery();
        }
    }

    private static List<string> Column(SqliteConnection connection, string sql)
    {
        using var command = Command(connection, sql);
        using var row = command.ExecuteReader();
        var values = new List<string>();
        while (row.Read()) values.Add(row.GetString(0));
        return values;
    }

    private static void Run(SqliteConnection connection, string sql)
    {
        using var command = Command(connection, sql);
        command.ExecuteNonQuery();
    }

    private static SqliteCommand Command(SqliteConnection connection, string sql)
    {
        var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only this file's own texts come here.
        command.CommandText = sql;
#pragma warning restore CA2100
        return command;
    }
}
