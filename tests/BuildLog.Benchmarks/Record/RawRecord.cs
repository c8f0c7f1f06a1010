using System.Globalization;
using System.IO.Compression;
using System.Text.Json;
using Microsoft.Data.Sqlite;

namespace BuildLog.Benchmarks.Record;

/// <summary>The same questions and the same change by hand: what reading and writing these rows costs at least.</summary>
internal sealed class RawRecord(SqliteConnection connection)
{
    private const string Fitted =
        """
        SELECT f.*, c.* FROM Fitments f JOIN Components c ON c.Id = f.ComponentId
        WHERE f.VehicleId = $vehicle AND f.FromDate <= $day AND (f.ToDate IS NULL OR f.ToDate > $day)
        """;

    private const string Measured =
        """
        SELECT s.*, r.* FROM Fitments f JOIN Sessions s ON s.ComponentId = f.ComponentId JOIN Readings r ON r.SessionId = s.Id
        WHERE f.VehicleId = $vehicle AND f.FromDate <= $day AND (f.ToDate IS NULL OR f.ToDate > $day) ORDER BY s.Date DESC, s.Id DESC, r.Ordinal
        """;

    private const string Timeline = "SELECT f.*, c.* FROM Fitments f JOIN Components c ON c.Id = f.ComponentId WHERE f.VehicleId = $vehicle ORDER BY f.FromDate, f.FromOrder";

    private const string Noting =
        """
        INSERT INTO Notes (About, AboutUid, Date, Title, Body, Uid, Version) VALUES ('Vehicle', $about, $day, $title, $body, $uid, 0);
        INSERT INTO ChangeSets (At, Label, Machine, Step) VALUES ($at, $title, 'bench', 'Forward');
        INSERT INTO Changes (ChangeSetId, TableName, RowId, RecordUid, VehicleId, Op, Diff) VALUES (last_insert_rowid(), 'Notes', 0, $uid, NULL, 'Insert', $diff);
        INSERT INTO Findables (RecordUid, Kind, Day, Title, About, Body) VALUES ($uid, 'note', $day, $title, '', $body);
        """;

    private const string Counting =
        """
        INSERT INTO Sessions (Date, Helper, Conditions, Notes, ComponentId, VehicleId, Method, Wheels, ReadTo, Align, Hub, Uid, Version)
        VALUES ($day, '', '', '', $axle, $vehicle, 'turn count', 'OneHeld', '0.25', '0.02', '', $uid, 0);
        INSERT INTO Readings (SessionId, Ordinal, Text) SELECT s.Id, r.value, '10:20.5' FROM Sessions s, json_each('[1,2,3]') r WHERE s.Uid = $uid;
        INSERT INTO ChangeSets (At, Label, Machine, Step) VALUES ($at, 'added turn count', 'bench', 'Forward');
        INSERT INTO Changes (ChangeSetId, TableName, RowId, RecordUid, VehicleId, Op, Diff) SELECT (SELECT max(Id) FROM ChangeSets), iif(r.value = 0, 'Sessions', 'Readings'), r.value, $uid, $vehicle, 'Insert', $diff FROM json_each('[0,1,2,3]') r;
        INSERT INTO Findables (RecordUid, Kind, VehicleId, ComponentId, Day, Title, About, Body) VALUES ($uid, 'turn count', $vehicle, $axle, $day, 'of 3 May 2026', 'Project axle', '10:20.5 0.25 0.02');
        """;

    public int OnADay(long vehicle, DateOnly day) => Read(Fitted, vehicle, day) + Read(Measured, vehicle, day) + Read("SELECT * FROM Vehicles WHERE Id = $vehicle", vehicle, day);

    public int Page(long vehicle) => Read(Timeline, vehicle, default);

    public void Note(Guid about, string title, string body)
    {
        var uid = Guid.CreateVersion7();
        using var transaction = connection.BeginTransaction();
        using var command = connection.CreateCommand();
        command.CommandText = Noting;
        command.Parameters.AddWithValue("$about", about);
        command.Parameters.AddWithValue("$day", "2026-05-03");
        command.Parameters.AddWithValue("$title", title);
        command.Parameters.AddWithValue("$body", body);
        command.Parameters.AddWithValue("$uid", uid);
        command.Parameters.AddWithValue("$at", DateTime.UtcNow.ToString("O", CultureInfo.InvariantCulture));
        command.Parameters.AddWithValue("$diff", $$"""{"Title":[null,"{{title}}"],"Body":[null,"{{body}}"],"Uid":[null,"{{uid}}"]}""");
        command.ExecuteNonQuery();
        transaction.Commit();
    }

    public void Count(long vehicle, long axle)
    {
        using var transaction = connection.BeginTransaction();
        using var command = connection.CreateCommand();
        command.CommandText = Counting;
        command.Parameters.AddWithValue("$day", "2026-05-03");
        command.Parameters.AddWithValue("$vehicle", vehicle);
        command.Parameters.AddWithValue("$axle", axle);
        command.Parameters.AddWithValue("$uid", Guid.CreateVersion7());
        command.Parameters.AddWithValue("$at", DateTime.UtcNow.ToString("O", CultureInfo.InvariantCulture));
        command.Parameters.AddWithValue("$diff", """{"Date":[null,"2026-05-03"],"Method":[null,"turn count"],"Wheels":[null,"OneHeld"]}""");
        command.ExecuteNonQuery();
        transaction.Commit();
    }

    private const string Sessions =
        """
        SELECT s.*, r.* FROM Fitments f JOIN Sessions s ON s.ComponentId = f.ComponentId JOIN Readings r ON r.SessionId = s.Id
        WHERE f.VehicleId = $vehicle ORDER BY s.Date DESC, s.Id DESC, r.Ordinal
        """;

    private const string TakingBack =
        """
        INSERT INTO ChangeSets (At, Label, Machine, Step) VALUES ($at, 'undid', 'bench', 'Forward');
        INSERT INTO Changes (ChangeSetId, TableName, RowId, RecordUid, VehicleId, Op, Diff)
        SELECT last_insert_rowid(), 'Notes', Id, Uid, NULL, 'Delete', json_object('Title', Title, 'Body', Body) FROM Notes ORDER BY Id DESC LIMIT 1;
        DELETE FROM Findables WHERE RecordUid = (SELECT Uid FROM Notes ORDER BY Id DESC LIMIT 1);
        DELETE FROM Notes WHERE Id = (SELECT max(Id) FROM Notes);
        """;

    // Into tables that nothing guards, which the next copy empties.
    private const string Copying =
        """
        CREATE TEMP TABLE IF NOT EXISTS FitmentsThere AS SELECT * FROM Fitments WHERE 0; CREATE TEMP TABLE IF NOT EXISTS ComponentsThere AS SELECT * FROM Components WHERE 0;
        DELETE FROM FitmentsThere; DELETE FROM ComponentsThere;
        INSERT INTO FitmentsThere SELECT * FROM Fitments WHERE VehicleId = $vehicle;
        INSERT INTO ComponentsThere SELECT c.* FROM Components c JOIN Fitments f ON f.ComponentId = c.Id WHERE f.VehicleId = $vehicle;
        """;

    /// <summary>Every fitment of a vehicle with its part, and every reading on any of them.</summary>
    public int WithMeasurements(long vehicle) => Read(Timeline, vehicle, default) + Read(Sessions, vehicle, default);

    /// <summary>The latest fifty that hold the words, with their texts.</summary>
    public int Search(string words)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT f.* FROM FindableText t JOIN Findables f ON f.Id = t.rowid WHERE FindableText MATCH $words ORDER BY t.rowid DESC LIMIT 50";
        command.Parameters.AddWithValue("$words", words);
        using var row = command.ExecuteReader();
        return Count(row);
    }

    /// <summary>Every row of the tables that hold something, as JSON in a zip.</summary>
    public void WriteOut(string path)
    {
        using var zip = new ZipArchive(File.Create(path), ZipArchiveMode.Create);
        foreach (var table in Tables)
        {
            using var entry = zip.CreateEntry(table + ".json").Open();
            using var json = new Utf8JsonWriter(entry, new JsonWriterOptions { Indented = true });
            using var all = Prepared(connection, $"SELECT * FROM {table}", 0);
            using var row = all.ExecuteReader();
            json.WriteStartArray();
            while (row.Read())
            {
                json.WriteStartObject();
                for (var k = 0; k < row.FieldCount; k++)
                {
                    json.WritePropertyName(row.GetName(k));
                    if (row.IsDBNull(k)) json.WriteNullValue();
                    else if (row.GetFieldType(k) == typeof(long)) json.WriteNumberValue(row.GetInt64(k));
                    else if (row.GetFieldType(k) == typeof(double)) json.WriteNumberValue(row.GetDouble(k));
                    else json.WriteStringValue(row.GetString(k));
                }

                json.WriteEndObject();
                if (json.BytesPending > 65536) json.Flush();
            }

            json.WriteEndArray();
        }
    }

    /// <summary>Every row into an empty record, in one transaction with prepared commands, each with a line of the log and one of the search.</summary>
    public void CopyInto(string path)
    {
        using var there = new SqliteConnection($"Data Source={path};Foreign Keys=True;Pooling=False");
        there.Open();
        using var transaction = there.BeginTransaction();
        using var set = Prepared(there, "INSERT INTO ChangeSets (At, Label, Machine, Step) VALUES ('2026-05-03T00:00:00Z', 'copied', 'bench', 'Forward')", 0);
        set.ExecuteNonQuery();
        using var log = Prepared(there, "INSERT INTO Changes (ChangeSetId, TableName, RowId, RecordUid, Op, Diff) VALUES (1, $0, $1, $2, 'Insert', $3)", 4);
        using var found = Prepared(there, "INSERT INTO Findables (RecordUid, Kind, Title, About, Body) VALUES ($0, $1, $2, '', $3)", 4);
        foreach (var table in Tables)
        {
            using var all = Prepared(connection, $"SELECT * FROM {table}", 0);
            using var row = all.ExecuteReader();
            using var insert = Prepared(there, $"INSERT INTO {table} VALUES ({string.Join(", ", Enumerable.Range(0, row.FieldCount).Select(k => FormattableString.Invariant($"${k}")))})", row.FieldCount);
            var values = new object[row.FieldCount];
            var uid = Enumerable.Range(0, row.FieldCount).FirstOrDefault(k => row.GetName(k) == "Uid", -1);
            while (row.Read())
            {
                row.GetValues(values);
                Run(insert, values);
                var said = string.Join(' ', values);
                Run(log, table, values[0], uid < 0 ? "" : values[uid], JsonSerializer.Serialize(new { After = said }));
                if (uid >= 0) Run(found, values[uid], table, table, said);
            }
        }

        transaction.Commit();
    }

    private static readonly string[] Tables = ["Vehicles", "Components", "Fitments", "Sessions", "Readings"];

    private static SqliteCommand Prepared(SqliteConnection on, string sql, int values)
    {
        var command = on.CreateCommand();
#pragma warning disable CA2100 // Only this file's own texts come here.
        command.CommandText = sql;
#pragma warning restore CA2100
        for (var k = 0; k < values; k++) command.Parameters.Add(new SqliteParameter { ParameterName = FormattableString.Invariant($"${k}") });
        return command;
    }

    private static void Run(SqliteCommand command, params object[] values)
    {
        for (var k = 0; k < values.Length; k++)
        {
            command.Parameters[k].ResetSqliteType();
            command.Parameters[k].Value = values[k];
        }

        command.ExecuteNonQuery();
    }

    public void TakeBackLatest() => Write(TakingBack, 0);

    public void CopyRowsOf(long vehicle) => Write(Copying, vehicle);

    public static void CopyFile(SqliteConnection connection, string path)
    {
        File.Delete(path);
        using var command = connection.CreateCommand();
        command.CommandText = "VACUUM INTO $path";
        command.Parameters.AddWithValue("$path", path);
        command.ExecuteNonQuery();
    }

    private void Write(string sql, long vehicle)
    {
        using var transaction = connection.BeginTransaction();
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only this file's own texts come here.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.Parameters.AddWithValue("$vehicle", vehicle);
        command.Parameters.AddWithValue("$at", DateTime.UtcNow.ToString("O", CultureInfo.InvariantCulture));
        command.ExecuteNonQuery();
        transaction.Commit();
    }

    private int Read(string sql, long vehicle, DateOnly day)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only this file's own texts come here.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.Parameters.AddWithValue("$vehicle", vehicle);
        if (sql.Contains("$day", StringComparison.Ordinal)) command.Parameters.AddWithValue("$day", day);
        using var row = command.ExecuteReader();
        return Count(row);
    }

    private static int Count(SqliteDataReader row)
    {
        var values = new object[row.FieldCount];
        var count = 0;
        while (row.Read()) count += row.GetValues(values) > 0 ? 1 : 0;
        return count;
    }
}
